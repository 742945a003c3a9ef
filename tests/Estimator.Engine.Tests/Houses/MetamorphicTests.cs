using System.Globalization;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Wiring;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Engine.Tests.Houses;

/// <summary>How answers change, or do not, when a random house is changed in one respect.</summary>
public sealed class MetamorphicTests
{
    private const int Houses = 250;

    [Fact]
    public void House_MovedTurnedMirroredShuffled_NeedsTheSame() => Each(job =>
    {
        var expected = Quantities(SmallJobs.Estimate(job));
        foreach (var (name, other) in new[] { ("moved", JobTransforms.Moved(job)), ("turned", JobTransforms.Turned(job)), ("mirrored", JobTransforms.Mirrored(job)), ("shuffled", JobTransforms.Shuffled(job)) })
        {
            Same(name, expected, Quantities(SmallJobs.Estimate(other)));
        }
    });

    [Fact]
    public void House_InAnotherCulture_GivesTheSameBytes() => Each(job =>
    {
        var expected = Dump(SmallJobs.Estimate(job));
        var culture = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = Comma();
            Same("other culture", expected, Dump(SmallJobs.Estimate(job)));
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    });

    [Fact]
    public void Pinned_Doubled_DoublesHorizontalCableAndNothingElse() => EachPinned(p => p.Doubled());

    [Fact]
    public void Pinned_CeilingAFootHigher_AddsTheCountedRises() => EachPinned(p => p.Raised(), WithoutTrench);

    [Fact]
    public void Pinned_PanelMoved_ChangesHomeRunsOnly() => EachPinned(p => p.PanelMoved());

    [Fact]
    public void Plan_OfTheEngine_CostsNoMoreThanAnyItVisited() => Each(job =>
    {
        var estimate = SmallJobs.Estimate(job);
        var traces = new List<SearchTrace>();
        HouseWiring.Plan(estimate.Layout, estimate.Controls, Catalogues.Shipped.Boxes, SearchDepth.Thorough, traces.Add);
        foreach (var trace in traces.Where(t => t.Plans.Length > 1))
        {
            foreach (var plan in trace.Plans)
            {
                var pinned = job with
                {
                    Pins = new Pins
                    {
                        Circuits = [.. plan.Select((members, i) => new PinnedCircuit
                        {
                            Id = $"visited-{i}",
                            Panel = job.Panels[trace.Group.Panel].Id,
                            Outlets = [.. members.SelectMany(m => trace.Units[m].Boxes).Select(b => Ids(estimate)[b])],
                        })],
                    },
                };
                Assert.True(estimate.Wiring.PlanningCostE4 <= SmallJobs.Estimate(pinned).Wiring.PlanningCostE4);
            }
        }
    }, 60);

    private static List<string> Ids(JobEstimate estimate) => [.. Engine.Wiring.Boxes.BoxForming.Form(estimate.Layout).Select(b => b.Id)];

    private static void Each(Action<Job> check, int houses = Houses) => Parallel.For(0, houses, n =>
    {
        try
        {
            check(HouseGen.Number(n));
        }
        catch (Exception e) when (e is Xunit.Sdk.XunitException)
        {
            throw new InvalidOperationException($"house {n}: {e.Message}", e);
        }
    });

    // A trench is met along walls or overhead, whichever is shorter, and that may turn with the ceiling.
    private static bool WithoutTrench(Job job) => job.Buildings.IsEmpty;

    private static void EachPinned(Func<PinnedPlan, IEnumerable<string>> change, Func<Job, bool>? of = null) => Each(job =>
    {
        if (of is not null && !of(job))
        {
            return;
        }

        var plan = new PinnedPlan(job, SmallJobs.Estimate, Length.Zero);
        Assert.Empty(plan.Pinned().Concat(change(plan)));
    });

    private static string Quantities(JobEstimate estimate) => string.Join('\n', estimate.Takeoff.Lines.Select(l => string.Create(CultureInfo.InvariantCulture, $"{l.ItemId} {l.Quantity.Value}"))
        .Append(string.Create(CultureInfo.InvariantCulture, $"hours {estimate.Labor.Total.Value} price {estimate.Bid.Price.Value} planning {estimate.Wiring.PlanningCostE4}")));

    private static string Dump(JobEstimate estimate) => string.Join('\n', estimate.Book.Pages.SelectMany(p => Enumerable.Range(0, p.Count).Select(i => p[i]))
        .Select(n => string.Create(CultureInfo.InvariantCulture, $"{n.Ref} {n.Operation} {n.Rule} {n.Label} {n.Value}"))) + Quantities(estimate)
        + string.Join('\n', estimate.Findings.Select(f => f.Text)) + string.Join('\n', estimate.Wiring.Circuits.Select(c => c.Name));

    // A culture that writes numbers otherwise, made by hand since the program runs in invariant mode.
    private static CultureInfo Comma()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        (culture.NumberFormat.NumberDecimalSeparator, culture.NumberFormat.NumberGroupSeparator, culture.NumberFormat.NegativeSign) = (",", ".", "~");
        return culture;
    }

    private static void Same(string what, string expected, string actual)
    {
        if (expected != actual)
        {
            var (a, b) = (expected.Split('\n'), actual.Split('\n'));
            Assert.Fail($"{what}: {string.Join("; ", a.Except(b).Take(4))} became {string.Join("; ", b.Except(a).Take(4))}");
        }
    }
}
