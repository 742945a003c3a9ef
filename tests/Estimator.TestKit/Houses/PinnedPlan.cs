using Estimator.Engine;
using Estimator.Engine.Changes;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.TestKit.Houses;

/// <summary>A house whose places, controls, circuits and runs are pinned as the engine chose them, and what must follow when the plan is changed in one respect.</summary>
/// <remarks>
/// Longer circuits would take thicker conductors: that rule is set aside, since it is not of the path. Runs to rooms whose openings were drawn wrong, and
/// are found so, are left out: where such an opening ends is a guess.
/// </remarks>
public sealed class PinnedPlan
{
    private const long FootNanometres = 304_800_000;

    private readonly Func<Job, JobEstimate> _estimate;
    private readonly Job _job;
    private readonly long _rounding;
    private readonly HashSet<string> _guessed;
    private readonly JobEstimate _before;
    private readonly Dictionary<string, Run> _runs;

    /// <param name="job">The house.</param>
    /// <param name="estimate">The engine.</param>
    /// <param name="rounding">How far a run's horizontal length may differ for spots on slanting walls, which lie on whole sixteenths of an inch.</param>
    public PinnedPlan(Job job, Func<Job, JobEstimate> estimate, Length rounding)
    {
        _estimate = estimate;
        _rounding = rounding.ToNanometres();
        Free = estimate(job with { Practice = job.Practice with { BranchVoltageDropPercent = Percent.FromHundredths(1000) } });
        _job = JobTransforms.AsPolygons(FrozenWiring.Pin(Free));
        _before = estimate(_job);
        _runs = Runs(_before);
        _guessed = [.. Free.Findings.Where(f => f.Code is "opening-off-wall" or "opening-wider-than-wall").SelectMany(f => f.Where)];
    }

    /// <summary>The house before anything was pinned.</summary>
    public JobEstimate Free { get; }

    /// <summary>Pinning what the engine chose changes no run.</summary>
    public IEnumerable<string> Pinned() => Compare("pinned", Runs(Free), _runs, (a, b) => Near(a.Total.Value, b.Total.Value));

    /// <summary>Twice every coordinate: twice the horizontal cable, the same rises and make-up.</summary>
    public IEnumerable<string> Doubled() => Compare("doubled", _runs, Runs(_estimate(JobTransforms.Doubled(_job))), (a, b) =>
        Near(2 * a.Path.Horizontal.Value, b.Path.Horizontal.Value) && a.Path.Vertical.Value == b.Path.Vertical.Value && a.MakeUp.Value == b.MakeUp.Value);

    /// <summary>A foot more of ceiling: a foot for each counted rise, nothing else.</summary>
    public IEnumerable<string> Raised() => Compare("raised", _runs, Runs(_estimate(JobTransforms.Raised(_job))), (a, b) =>
        a.Path.Horizontal.Value == b.Path.Horizontal.Value && a.Path.Vertical.Value + Rises(a) * FootNanometres == b.Path.Vertical.Value);

    /// <summary>The panel in another corner of its room: other home runs, no other run.</summary>
    public IEnumerable<string> PanelMoved()
    {
        var room = _job.Levels.SelectMany(l => l.Rooms).First(r => r.Id == _job.Panels[0].Room);
        var moved = _job with { Panels = [_job.Panels[0] with { At = room.Corners[2], Wall = null }, .. _job.Panels.Skip(1)] };
        return Compare("panel moved", _runs, Runs(_estimate(moved)), (a, b) => a.Role is RunRole.HomeRun || a.Total.Value == b.Total.Value);
    }

    private bool Near(decimal a, decimal b) => Math.Abs(a - b) <= _rounding;

    private IEnumerable<string> Compare(string what, Dictionary<string, Run> before, Dictionary<string, Run> after, Func<Run, Run, bool> same)
    {
        foreach (var key in before.Keys.Except(after.Keys).Concat(after.Keys.Except(before.Keys)))
        {
            yield return $"{what}: run {key} is only on one side";
        }

        foreach (var (key, run) in before.Where(r => after.ContainsKey(r.Key) && !Guessed(r.Value) && !same(r.Value, after[r.Key])))
        {
            yield return $"{what}: {key}: {Text(run)} became {Text(after[key])}";
        }
    }

    private bool Guessed(Run run) => _guessed.Contains(_before.House.Rooms[_before.Wiring.Boxes[run.To].Place.Room].Source.Id)
        || (run.From >= 0 && _guessed.Contains(_before.House.Rooms[_before.Wiring.Boxes[run.From].Place.Room].Source.Id));

    private static string Text(Run run) => FormattableString.Invariant(
        $"{run.Path.Way} {run.Path.Horizontal.Value / FootNanometres:0.###} + {run.Path.Vertical.Value / FootNanometres:0.###} + {run.MakeUp.Value / FootNanometres:0.###} ft");

    // How many ceiling heights a run passes: up and down from boxes on walls, and one for each level between its ends.
    private int Rises(Run run)
    {
        var a = run.From < 0 ? _before.Layout.Panels[_before.Wiring.Circuits[run.Circuit].Panel].Place : _before.Wiring.Boxes[run.From].Place;
        var b = _before.Wiring.Boxes[run.To].Place;
        var (low, high) = a.Level <= b.Level ? (a, b) : (b, a);
        static int Hung(Placement p) => p.Mount is Mount.Ceiling ? 1 : 0;
        return run.Path.Way is not RunWay.Overhead ? 0
            : low.Level == high.Level ? 2 - Hung(low) - Hung(high)
            : high.Level - low.Level + Hung(high) - Hung(low);
    }

    private static Dictionary<string, Run> Runs(JobEstimate estimate)
    {
        string Name(int box, int panel) => box < 0 ? estimate.Layout.Panels[panel].Source.Id
            : estimate.Wiring.Boxes[box].Devices.Select(d => estimate.Layout.Devices[d].Id).DefaultIfEmpty(estimate.Wiring.Boxes[box].Id).Order(StringComparer.Ordinal).First();
        return estimate.Wiring.Runs
            .GroupBy(r => string.Join('|', new[] { Name(r.From, estimate.Wiring.Circuits[r.Circuit].Panel), Name(r.To, 0) }.Order(StringComparer.Ordinal).Append($"{r.Role} {r.Cable.TradeName}")))
            .SelectMany(g => g.Select((r, i) => (Key: $"{g.Key} {i}", Run: r))).ToDictionary(x => x.Key, x => x.Run);
    }
}
