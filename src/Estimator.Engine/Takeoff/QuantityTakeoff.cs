using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Circuits;
using Estimator.Engine.Wiring.Joints;

namespace Estimator.Engine.Takeoff;

/// <summary>Counts everything that the wiring asks for.</summary>
/// <remarks>Waste is not added to a quantity: purchase cuts the real runs and shows trim and leftovers; what a job buys beyond it stands beside it (<see cref="Spares"/>).</remarks>
public sealed class QuantityTakeoff
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = 4;

    private readonly HouseLayout _layout;
    private readonly WiringPlan _wiring;
    private readonly PartsCatalogue _catalogue;
    private readonly PageWriter _page = new(PageNumber);
    private readonly LineCollecting _lines;
    private readonly List<CountedDevice> _devices = [];
    private readonly WorkPlaces _places;

    private QuantityTakeoff(HouseLayout layout, WiringPlan wiring, PartsCatalogue catalogue)
    {
        (_layout, _wiring, _catalogue) = (layout, wiring, catalogue);
        _lines = new LineCollecting(catalogue, _page);
        _places = new WorkPlaces(layout, wiring, _page);
    }

    /// <summary>The takeoff.</summary>
    public static TakeoffResult Compute(HouseLayout layout, WiringPlan wiring, PartsCatalogue catalogue) =>
        new QuantityTakeoff(layout, wiring, catalogue).Compute();

    private TakeoffResult Compute()
    {
        foreach (var circuit in _wiring.Circuits)
        {
            Circuit(circuit);
        }

        new PanelWork(_layout, _wiring, _catalogue, _lines, _page).Add();
        ImmutableArray<Finding> service = _layout.House.Job.Service is { } work ? new ServiceParts(_layout.House.Job, work, _lines, _page).Add() : [];
        ImmutableArray<Finding> apart = new BuildingParts(_layout, _wiring, _lines, _page).Add();
        var small = new SmallParts(_layout, _wiring, _lines, _page);
        small.Add();
        var openings = Openings();
        _lines.Add("opening-layout", openings, "job");
        _lines.Add("permit-visit", TakeoffRules.PermitVisits.Read(_page, Unit.Each), "job");
        _lines.Add("mobilization", TakeoffRules.Mobilizations.Read(_page, Unit.Each), "job");
        var (lines, findings) = _lines.Lines();
        return new TakeoffResult
        {
            Lines = new Spares(_layout.House.Job.Practice, _catalogue, _page).Over(lines),
            Devices = [.. _devices],
            SlowCable = _places.Cables(),
            Pieces = CablePieces.Of(_layout.House.Job, _wiring, _catalogue, _page),
            UsefulEnd = CablePieces.UsefulEnd(_layout.House.Job, _page),
            Openings = openings,
            Findings = [.. service, .. apart, .. small.Findings(), .. findings],
            Page = _page.ToPage(),
        };
    }

    private Fact Openings() => _page.Constant(
        "Devices, luminaires, alarms and equipment outlets", _layout.Devices.Length + _layout.Equipment.Length, Unit.Each);

    private void Circuit(Circuit circuit)
    {
        if (circuit.BreakerPoles > 0)
        {
            _lines.AddOne($"breaker-{circuit.BreakerPoles}-{circuit.BreakerA.Value:0}-{Words.Snake(circuit.Protection)}", "Breaker of the circuit", circuit.Id);
        }

        _lines.AddOne("circuit-label", "Directory entry of the circuit", circuit.Id);
        _lines.AddOne("consumables", "Consumables of the circuit", circuit.Id);
        for (var i = 0; i < circuit.Boxes.Length; i++)
        {
            Box(circuit, _wiring.Boxes[circuit.Boxes[i]]);
        }
    }

    private void Box(Circuit circuit, Box box)
    {
        var room = _layout.House.Rooms[box.Place.Room].Source.Id;
        if (box.Item is { } item)
        {
            _lines.AddOne(item.ItemId, "Box", room);
        }

        if (box.Equipment >= 0)
        {
            Equipment(circuit, box, room);
            return;
        }

        for (var d = 0; d < box.Devices.Length; d++)
        {
            Device(circuit, box, _layout.Devices[box.Devices[d]], further: d > 0, box.OwnGroundFault, room);
        }

        Plate(box, box.OwnGroundFault, room);
    }

    private void Device(Circuit circuit, Box box, LaidDevice device, bool further, bool protects, string room)
    {
        var kind = protects && device.Kind is DeviceKind.DuplexReceptacle ? DeviceKind.GfciReceptacle : device.Kind;
        var kit = PartsCatalogue.KitKey(kind, RatingOf(circuit, kind), box.Use is BoxUse.Weatherproof);
        var together = $"{kit}-three-way";
        Count(WorksWithOthers(box, device) && _catalogue.OfKit(together) is not null ? together : kit, box, further, device.OwnerSupplied, room);
    }

    // A dimmer or sensor that acts together with other switches has travellers, and is another article than one that acts alone.
    private bool WorksWithOthers(Box box, LaidDevice device) => device.Kind is DeviceKind.Dimmer or DeviceKind.SensorSwitch
        && box.Joints.SelectMany(j => j.Terminals).Any(t => t.Name is TerminalName.TravellerA && t.Device >= 0 && _layout.Devices[t.Device] == device);

    private void Count(string kit, Box box, bool further, bool owner, string room)
    {
        var item = _catalogue.OfKit(kit)?.Id ?? kit;
        _lines.AddOne(item, "Device", room, owner);
        var ceiling = box.Place.Mount is Framing.Mount.Ceiling ? (int)decimal.Ceiling(box.Place.HeightFact.AsLength().Value.ToFeet()) : 0;
        _devices.Add(new CountedDevice(item, further, _places.Of(box), ceiling, owner));
    }

    private void Equipment(Circuit circuit, Box box, string room)
    {
        var equipment = _layout.Equipment[box.Equipment];
        if (equipment.Connection is Connection.HardWired)
        {
            Count("hard_wired", box, further: false, owner: false, room);
            if (equipment.Source.Disconnect is DisconnectPlace.WithinSight)
            {
                _lines.AddOne("equipment-disconnect", "Disconnect in sight of the equipment", room);
            }
        }
        else if (circuit.Poles == 2)
        {
            Count(PartsCatalogue.KitKey(DeviceKind.Receptacle240V, RatingOf(circuit, DeviceKind.Receptacle240V), weatherResistant: false), box, further: false, owner: false, room);
        }
        else
        {
            var amperes = circuit.BreakerA.Value <= CircuitRatings.For(CircuitKind.Lighting).Number() ? TakeoffRules.GeneralReceptacleA : TakeoffRules.RequiredReceptacleA;
            var protects = box.OwnGroundFault ? DeviceKind.GfciReceptacle : DeviceKind.DuplexReceptacle;
            Count(PartsCatalogue.KitKey(protects, (int)amperes.Number(), box.Use is BoxUse.Weatherproof), box, further: false, owner: false, room);
            _lines.AddOne(box.Use is BoxUse.Weatherproof ? "cover-in-use" : "plate-1-duplex", box.Use is BoxUse.Weatherproof ? "Cover of a receptacle outdoors" : "Plate", room);
        }
    }

    // A box shows as many openings as it has devices on yokes; luminaires and alarms cover their own.
    private void Plate(Box box, bool protects, string room)
    {
        if (box.Use is BoxUse.Weatherproof && _layout.Devices[box.Devices[0]].Kind.IsReceptacle())
        {
            _lines.AddOne("cover-in-use", "Cover of a receptacle outdoors", room);
            return;
        }

        var openings = box.Devices.Select(d => OpeningOf(_layout.Devices[d].Kind, protects)).OfType<string>().Distinct().ToList();
        if (openings.Count > 0)
        {
            _lines.AddOne($"plate-{box.Gangs}-{(openings.Count == 1 ? openings[0] : "mixed")}", "Plate", room);
        }
    }

    private static string? OpeningOf(DeviceKind kind, bool protects) => kind switch
    {
        DeviceKind.GfciReceptacle or DeviceKind.Dimmer or DeviceKind.SensorSwitch => "rectangular",
        DeviceKind.DuplexReceptacle when protects => "rectangular",
        DeviceKind.DuplexReceptacle or DeviceKind.HalfHotReceptacle => "duplex",
        _ when kind.IsSwitch() => "toggle",
        _ => null,
    };

    private static int RatingOf(Circuit circuit, DeviceKind kind)
    {
        if (kind is DeviceKind.Receptacle240V)
        {
            return TakeoffRules.ApplianceReceptacleA(circuit.BreakerA.Value);
        }

        if (kind.IsSwitch())
        {
            return (int)circuit.BreakerA.Value;
        }

        return (int)(circuit.Kind is CircuitKind.Receptacles or CircuitKind.General or CircuitKind.Lighting ? TakeoffRules.GeneralReceptacleA : TakeoffRules.RequiredReceptacleA).Number();
    }
}
