using System.Collections.Immutable;
using Estimator.Engine.Controls;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Loads;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Circuits;

namespace Estimator.Engine.Checks;

/// <summary>What a check reads, how it words a finding, and which rules it found to apply.</summary>
internal sealed class CheckContext(HouseLayout layout, ControlPlan controls, WiringPlan wiring, LoadWorksheets loads, PageWriter page)
{
    private readonly ILookup<int, LaidDevice> _devices = layout.Devices.ToLookup(d => d.Place.Room);
    private readonly HashSet<string> _applied = new(StringComparer.Ordinal);
    private int[]? _boxOf;

    internal HouseLayout Layout => layout;

    internal FramedHouse House => layout.House;

    internal ControlPlan Controls => controls;

    internal WiringPlan Wiring => wiring;

    internal LoadWorksheets Loads => loads;

    internal PageWriter Page => page;

    internal Job Job => layout.House.Job;

    internal CodeEdition Edition => Job.Code.Edition;

    internal int Year => (int)Edition;

    /// <summary>Codes of the rules that applied to something in the house.</summary>
    internal ImmutableHashSet<string> Applied => [.. _applied];

    internal ImmutableArray<Box> Boxes => wiring.Boxes;

    /// <summary>Devices of a room.</summary>
    internal IEnumerable<LaidDevice> In(int room) => _devices[room];

    /// <summary>A rule that holds at the site; null for one that the edition does not have or that is waived there.</summary>
    internal CodeRule? Rule(string key) => CodeRules.For(key, Edition) is var rule && LocalRules.InForce(Job.Code, rule) ? rule : null;

    /// <summary>Notes that a rule applies to something, so that silence about it means that it is held.</summary>
    internal void Applies(CodeRule rule) => _applied.Add(rule.Code);

    /// <summary>The edition's figure, unless a local amendment put another in its place.</summary>
    internal decimal Limit(string code, RuleRow row) => LocalRules.Figure(Job.Code, code, row.Number());

    /// <summary>A finding where a rule that applies is not held; nothing where it is.</summary>
    internal IEnumerable<Finding> Ask(CodeRule rule, bool held, Func<FormattableString> text, ImmutableArray<string> where, Severity severity = Severity.Mandatory)
    {
        _applied.Add(rule.Code);
        if (!held)
        {
            yield return Asked(rule, text(), where, severity);
        }
    }

    /// <summary>A finding by a rule.</summary>
    internal Finding Asked(CodeRule rule, FormattableString text, ImmutableArray<string> where, Severity severity = Severity.Mandatory, string? article = null, bool? verified = null)
    {
        _applied.Add(rule.Code);
        return new Finding
        {
            Code = rule.Code,
            Severity = severity,
            Where = where,
            Text = FormattableString.Invariant(text),
            Article = article ?? rule.Article,
            Edition = rule.Edition,
            Verified = verified ?? rule.Verified,
        };
    }

    /// <summary>What a finding calls a device.</summary>
    internal string Called(LaidDevice device) => OutletNames.Of(device, House.Rooms[device.Place.Room].Source);

    /// <summary>What a finding calls a box: by its first device, or by its equipment.</summary>
    internal string Called(Box box) => box.Equipment >= 0 ? ServiceReceptacles.Named(layout.Equipment[box.Equipment]) : Called(layout.Devices[box.Devices[0]]);

    /// <summary>What a finding calls a device where its sentence begins.</summary>
    internal string CalledAtStart(LaidDevice device) => OutletNames.AtStart(Called(device));

    /// <summary>The box of a device, by its index in the layout; null for one that no box took.</summary>
    internal Box? BoxOf(int device)
    {
        if (_boxOf is null)
        {
            _boxOf = new int[layout.Devices.Length];
            Array.Fill(_boxOf, -1);
            for (var b = 0; b < wiring.Boxes.Length; b++)
            {
                foreach (var d in wiring.Boxes[b].Devices)
                {
                    _boxOf[d] = b;
                }
            }
        }

        return _boxOf[device] is >= 0 and var box ? wiring.Boxes[box] : null;
    }

    /// <summary>New equipment with the box and the circuit that feed it.</summary>
    internal IEnumerable<(LaidEquipment Equipment, Box Box, Circuit Circuit)> Fed() => wiring.Boxes.Where(b => b.Equipment >= 0)
        .Select(b => (layout.Equipment[b.Equipment], b, wiring.Circuits[b.Circuit]));

    internal string RoomName(int room) => layout.House.Rooms[room].Source.Called();

    /// <summary>Whether a receptacle or other outlet in a box has ground-fault protection.</summary>
    internal bool HasGroundFault(Circuit circuit, Box box) => circuit.Protection is Panels.Protection.GroundFault or Panels.Protection.DualFunction
        || circuit.FirstReceptacleProtects || box.OwnGroundFault || box.Devices.Any(d => layout.Devices[d].Kind is DeviceKind.GfciReceptacle);
}
