using Estimator.Engine;
using Estimator.Engine.Findings;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.Engine.Wiring;
using Estimator.Engine.Wiring.Boxes;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.RealPlans.Tests;

/// <summary>Every plan imports and takes off, says what was assumed, and is wired alike however it is turned or listed.</summary>
public sealed class TakeoffTests
{
    public static TheoryData<string> Names() => PlanFolder.Names();

    [Theory]
    [MemberData(nameof(Names))]
    public void Plan_OfRealHouse_TakesOffAndSaysWhatItAssumed(string name)
    {
        var job = PlanFolder.Job(name);
        Assert.Contains(job.Proposals, p => p.Contains("Devices were suggested", StringComparison.Ordinal));
        Assert.True(JobFile.Read(JobFile.Write(job), name).Ok);
        var estimate = JobEstimate.Compute(job, PlanFolder.Catalogue);
        Assert.True(estimate.Bid.Price.Value > 0);
        Assert.All(estimate.Wiring.Boxes, b => Assert.True(b.Fits));
        Assert.DoesNotContain(estimate.Findings, f => f.Severity is Severity.Mandatory && f.Code is "receptacle-spacing" or "ground-fault-protection" or "arc-fault-protection" or "box-fill" && f.Severity is Severity.Mandatory);
        var devices = job.Levels.SelectMany(l => l.Rooms).Sum(r => r.Counts.Sum(c => c.Count));
        Assert.Equal(devices, estimate.Layout.Devices.Length);
        Assert.Equal(devices, estimate.Wiring.Boxes.Sum(b => b.Devices.Length));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Plan_TurnedMirroredAndShuffled_NeedsTheSame(string name)
    {
        var job = PlanFolder.Job(name);
        var expected = Quantities(JobEstimate.Compute(job, PlanFolder.Catalogue));
        foreach (var other in new[] { JobTransforms.Moved(job), JobTransforms.Turned(job), JobTransforms.Mirrored(job), JobTransforms.Shuffled(job) })
        {
            Assert.Equal(expected, Quantities(JobEstimate.Compute(other, PlanFolder.Catalogue)));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Plan_PinnedAndChangedInOneRespect_AnswersToThatAlone(string name)
    {
        var plan = new PinnedPlan(PlanFolder.Job(name), job => JobEstimate.Compute(job, PlanFolder.Catalogue), Length.FromInches(0.5m));
        var problems = plan.Pinned().Concat(plan.Doubled()).Concat(plan.Raised()).Concat(plan.PanelMoved()).ToList();
        Assert.True(problems.Count == 0, string.Join('\n', problems.Take(20)));
    }

    // The spots of a slanting wall lie on whole sixteenths of an inch, and drawn walls are up to half an inch out of parallel.
    [Theory]
    [MemberData(nameof(Names))]
    public void Runs_OfRealHouse_MeasureWhatTheyWereChosenBy(string name)
    {
        var estimate = JobEstimate.Compute(PlanFolder.Job(name), PlanFolder.Catalogue);
        var map = new FramingMap(estimate.House);
        foreach (var run in estimate.Wiring.Runs)
        {
            var from = run.From < 0 ? estimate.Layout.Panels[estimate.Wiring.Circuits[run.Circuit].Panel].Place : estimate.Wiring.Boxes[run.From].Place;
            Assert.True(map.TryWay(from, estimate.Wiring.Boxes[run.To].Place, run.Path.Way, out var chosen));
            Assert.InRange(run.Path.Horizontal.AsLength().Value.ToSixteenths() - chosen.Horizontal, -8, 8);
            Assert.Equal(chosen.Vertical, run.Path.Vertical.AsLength().Value.ToSixteenths());
            Assert.InRange(run.Path.Bores.Value - chosen.Bores, -1, 1);
        }

        Assert.Empty(ExplanationCheck.Problems(estimate.Book).Concat(SumCheck.Problems(estimate)));
    }

    // The first and the last way of dividing circuits that the search of a group looked at, pinned.
    [Theory]
    [MemberData(nameof(Names))]
    public void Plan_OfTheEngine_CostsNoMoreThanThoseItVisited(string name)
    {
        var job = PlanFolder.Job(name);
        var estimate = JobEstimate.Compute(job, PlanFolder.Catalogue);
        var ids = BoxForming.Form(estimate.Layout).Select(b => b.Id).ToList();
        var traces = new List<SearchTrace>();
        HouseWiring.Plan(estimate.Layout, estimate.Controls, PlanFolder.Catalogue.Boxes, SearchDepth.Thorough, traces.Add);
        foreach (var trace in traces.Where(t => t.Plans.Length > 1))
        {
            foreach (var plan in new[] { trace.Plans[0], trace.Plans[^1] })
            {
                var circuits = plan.Select((members, i) => new PinnedCircuit
                {
                    Id = $"visited-{i}",
                    Panel = job.Panels[trace.Group.Panel].Id,
                    Outlets = [.. members.SelectMany(m => trace.Units[m].Boxes).Select(b => ids[b])],
                });
                var pinned = JobEstimate.Compute(job with { Pins = new Pins { Circuits = [.. circuits] } }, PlanFolder.Catalogue);
                Assert.True(estimate.Wiring.PlanningCostE4 <= pinned.Wiring.PlanningCostE4);
            }
        }
    }

    private static string Quantities(JobEstimate estimate) =>
        string.Join('\n', estimate.Takeoff.Lines.Select(l => $"{l.ItemId} {l.Quantity.Value}").Append($"hours {estimate.Labor.Total.Value}").Append($"price {estimate.Bid.Price.Value}"));
}
