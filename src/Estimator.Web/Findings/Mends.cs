using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Web.Appliances;
using Estimator.Web.Jobs;
using Estimator.Web.Panels;
using Estimator.Web.Site;

namespace Estimator.Web.Findings;

/// <summary>The mend that each kind of finding offers. Where none fits, the finding's own sentence says what to do.</summary>
public static class Mends
{
    /// <summary>The mend of a finding; null where it takes more than one step or a decision of the user.</summary>
    public static Mend? For(Finding finding, Job job) => OfRooms(finding, job) ?? OfPower(finding, job) ?? OfSwitches(finding, job) ?? TrialMends.For(finding, job);

    private static Mend? OfRooms(Finding finding, Job job) => finding.Code switch
    {
        "receptacle-spacing" => Device(finding, job, "Place receptacle", DeviceKind.DuplexReceptacle),
        "required-receptacle" => Required(finding, job),
        "bath-receptacle" => Device(finding, job, "Place receptacle", DeviceKind.GfciReceptacle, ServedPlace.Basin),
        "counter-receptacles" => Device(finding, job, "Place receptacle", DeviceKind.DuplexReceptacle, finding.Article.EndsWith("(2)", StringComparison.Ordinal) ? ServedPlace.Island : ServedPlace.Counter),
        "island-provision" => Device(finding, job, "Place receptacle", DeviceKind.DuplexReceptacle, ServedPlace.Island),
        "outdoor-receptacles" => Device(finding, job, "Place receptacle", DeviceKind.DuplexReceptacle, ServedPlace.Outdoors),
        "service-receptacle" => Device(finding, job, "Place receptacle", DeviceKind.GfciReceptacle),
        "smoke-alarm" => Alarm(finding, job, DeviceKind.SmokeAlarm),
        "co-alarm" => Alarm(finding, job, DeviceKind.CoAlarm),
        "lighting-outlet" or "equipment-light" => Room(finding, job) is { } room
            ? new Mend("Add light and switch", $"{RoomActs.Name(room)}: light and switch", j => RoomActs.Add(RoomActs.Add(j, room.Id, DeviceKind.CeilingLight), room.Id, DeviceKind.SinglePoleSwitch))
            : null,
        "entrance-light" => Room(finding, job) is { } entered
            ? new Mend(
                "Add outside light", $"{RoomActs.Name(entered)}: light outside and its switch",
                j => RoomActs.Add(RoomActs.Add(j, entered.Id, DeviceKind.WallLight, ServedPlace.Outdoors), entered.Id, DeviceKind.SinglePoleSwitch))
            : null,
        _ => null,
    };

    private static Room? Supplied(Finding finding, Job job) =>
        RoomActs.All(job).FirstOrDefault(r => finding.Where.Contains(r.Building ?? "") && r.Kind is not (RoomKind.Outdoors or RoomKind.Void or RoomKind.Bathroom or RoomKind.Closet or RoomKind.Stair));

    private static Mend? OfPower(Finding finding, Job job) => finding.Code switch
    {
        "voltage-drop" => new Mend(
            "Take thicker cable", "Thicker cable where the voltage drop passes what is advised",
            j => j with { Practice = j.Practice with { BranchVoltageDropPercent = Percent.FromHundredths(PracticeDefaults.BranchVoltageDropPercent.Number()) } }),
        "conduit-in-finished-walls" => new Mend(
            "Take flexible cable there", "Finished rooms: wired in metal-clad cable",
            j => j.WithRooms(r => r.Walls is WallState.Finished ? r with { WiringMethod = WiringMethod.Mc } : r)),
        "permissible-loads" or "heating-circuit" => Piece(finding, job) is { } piece
            ? new Mend("Give it its own circuit", $"{EquipmentWords.Of(piece)}: a circuit of its own", j => EquipmentActs.With(j, piece.Id, e => e with { OwnCircuit = true }))
            : null,
        "free-conductor" => new Mend("Leave as much as usual", "Cable left at each box: as usual", j => j with { Practice = j.Practice with { BoxTail = null } }),
        "range-circuit" or "continuous-load" or "appliance-device" or "nameplate" => Piece(finding, job) is { } fed && job.Pins.Circuits.Any(c => c.Outlets.Contains(fed.Id) && c.BreakerA is not null)
            ? new Mend("Size the breaker", $"{EquipmentWords.Of(fed)}: breaker by its load", j => PinMends.FreeBreaker(j, fed.Id))
            : null,
        "circuit-other-outlets" or "counter-circuits" => PinMends.Divide(finding, job),
        "appliance-disconnect" or "ac-disconnect" or "ev-disconnect" => Piece(finding, job) is { } cut
            ? new Mend("Add a disconnect", $"{EquipmentWords.Of(cut)}: a disconnect in sight", j => EquipmentActs.With(j, cut.Id, e => e with { Disconnect = DisconnectPlace.WithinSight }))
            : null,
        "conductor-to-breaker" or "required-circuits" when job.Pins.Circuits.Any(c => finding.Where.Contains(c.Id) && c.BreakerA is not null) => new Mend(
            "Size the breaker", "Breaker as the circuit asks", j => j with { Pins = j.Pins with { Circuits = [.. j.Pins.Circuits.Select(c => finding.Where.Contains(c.Id) ? c with { BreakerA = null } : c)] } }),
        "service-least" => job.Panels.FirstOrDefault(p => finding.Where.Contains(p.Id)) is { Existing: false } main
            ? new Mend("Take the least size", $"{PanelActs.Name(main)}: the least size of a service", j => PanelActs.With(j, main.Id, p => p with { RatingA = Current.FromAmperes(LocalRules.Figure(j.Code, finding.Code, LoadRules.ServiceLeast.Number())) }))
            : null,
        "emergency-disconnect" or "service-outdoors" when job.Service is null => new Mend(
            "State the work on the service", "Work on the service, as the edition has it", j => j with { Service = new ServiceWork() }),
        "building-supply" => Supplied(finding, job) is { } room
            ? new Mend("Hang a panel in it", $"{RoomActs.Name(room)}: a panel, fed from the house", j => PanelActs.AddIn(j, Guid.NewGuid().ToString("N")[..8], room.Id, BurialRules.PanelLeast(int.MaxValue).Number()))
            : null,
        "building-rating" => job.Panels.FirstOrDefault(p => finding.Where.Contains(p.Id)) is { } small
            ? new Mend("Take a larger panel", $"{PanelActs.Name(small)}: rated for its building", j => PanelActs.With(j, small.Id, p => p with { RatingA = Current.FromAmperes(BurialRules.PanelLeast(int.MaxValue).Number()) }))
            : null,
        "second-dwelling-disconnect" => new Mend("Put a disconnect outside", "A disconnect on the outside of the dwelling", j => SiteActs.Building(j, finding.Where[0], b => b with { DisconnectOutdoors = true })),
        "emergency-disconnect" or "service-outdoors" when job.Service is not null => new Mend(
            "Put it outdoors", "Service: disconnect as the edition has it", j => j with { Service = j.Service! with { Disconnect = null } }),
        "old-wiring" => job.Unknowns.FirstOrDefault(u => finding.Where.Contains(u.Id)) is { Allowance: null } unknown && OldWiringAllowances.For(unknown.Topic) is { } usual
            ? new Mend("Set an allowance", $"{SiteWords.Of(unknown.Topic)}: allowance", j => SiteActs.Unknown(j, unknown.Id, u => u with { Allowance = Money.FromDollars(usual.Number()) }))
            : null,
        _ => null,
    };

    private static Mend? OfSwitches(Finding finding, Job job) => finding.Code switch
    {
        "counter-height" or "switch-height" or "below-counter" => PlacedMends.UsualHeight(finding, job),
        "tub-zone" or "switch-at-tub" or "alarm-near-bath" or "alarm-near-cooking" => MovingMends.Device(finding, job),
        "panel-place" or "working-space" => MovingMends.Panel(finding, job),
        "closet-light" => PlacedMends.Recessed(finding, job),
        "tamper-resistant" => PlacedMends.Supply(finding, job),
        "stair-control" => StairMends.SwitchAbove(finding, job),
        "stair-dimmer" => StairMends.NoDimmer(finding, job),
        _ => null,
    };

    private static Mend? Required(Finding finding, Job job) => Room(finding, job) is not { } room
        ? null
        : room.Kind is RoomKind.Bathroom
            ? Device(finding, job, "Place receptacle", DeviceKind.GfciReceptacle, ServedPlace.Basin)
            : Device(finding, job, "Place receptacle", DeviceKind.DuplexReceptacle);

    private static Mend? Alarm(Finding finding, Job job, DeviceKind kind)
    {
        // An alarm of a level hangs outside its bedrooms: in the hall, else where people pass, else in any room that is lived in.
        var room = Room(finding, job) ?? job.Levels.Where(l => finding.Where.Contains(l.Id)).SelectMany(l => l.Rooms)
            .Where(r => r.Kind is not (RoomKind.Bedroom or RoomKind.Bathroom or RoomKind.Closet or RoomKind.Garage or RoomKind.Void or RoomKind.Outdoors or RoomKind.Attic or RoomKind.Crawl))
            .OrderBy(r => r.Kind switch { RoomKind.Hall => 0, RoomKind.Foyer => 1, RoomKind.Stair => 2, _ => 3 }).FirstOrDefault();
        var words = kind is DeviceKind.CoAlarm ? "carbon monoxide alarm" : "smoke alarm";
        return room is null ? null : new Mend("Place alarm", $"{RoomActs.Name(room)}: {words}", j => RoomActs.Add(j, room.Id, kind));
    }

    private static Mend? Device(Finding finding, Job job, string act, DeviceKind kind, ServedPlace serves = ServedPlace.Room) => Room(finding, job) is { } room
        ? new Mend(act, $"{RoomActs.Name(room)}: one more {Symbols.DeviceSign.Of(kind).Name}", j => RoomActs.Add(j, room.Id, kind, serves))
        : null;

    // The room that the finding names first.
    private static Room? Room(Finding finding, Job job) => RoomActs.All(job).Where(r => finding.Where.Contains(r.Id)).OrderBy(r => finding.Where.IndexOf(r.Id)).FirstOrDefault();

    private static Equipment? Piece(Finding finding, Job job) => job.Equipment.FirstOrDefault(e => finding.Where.Contains(e.Id));
}
