using System.Collections.Concurrent;
using System.Globalization;
using Estimator.Engine.House;
using Estimator.Engine.Tests.Wiring.Simulation;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Engine.Tests.Houses;

/// <summary>One sweep over many random houses: each is wired and every invariant is checked on it. HOUSES sets how many.</summary>
public sealed class RandomHouseTests
{
    private const int Houses = 10_000;

    // Shares that the generator must reach, so that no invariant holds for want of cases.
    private static readonly Dictionary<HouseFeatures, double> LeastShare = new()
    {
        [HouseFeatures.SeveralLevels] = 0.15,
        [HouseFeatures.RoomWithHole] = 0.02,
        [HouseFeatures.LShapedRoom] = 0.05,
        [HouseFeatures.ThreeWays] = 0.3,
        [HouseFeatures.FourWays] = 0.1,
        [HouseFeatures.Fan] = 0.1,
        [HouseFeatures.HalfHot] = 0.1,
        [HouseFeatures.SeveralAlarms] = 0.2,
        [HouseFeatures.Equipment] = 0.3,
        [HouseFeatures.OldWork] = 0.1,
        [HouseFeatures.HalfFullPanel] = 0.05,
        [HouseFeatures.TwoPanels] = 0.05,
        [HouseFeatures.Service] = 0.04,
    };

    [Fact]
    public void House_OfTheSweep_KeepsEveryInvariant()
    {
        var count = int.TryParse(Environment.GetEnvironmentVariable("HOUSES"), NumberStyles.None, CultureInfo.InvariantCulture, out var wanted) ? wanted : Houses;
        var problems = new ConcurrentQueue<string>();
        var seen = new ConcurrentDictionary<HouseFeatures, int>();
        Parallel.For(0, count, n =>
        {
            var job = HouseGen.Number(n);
            foreach (var feature in Enum.GetValues<HouseFeatures>().Where(f => f != HouseFeatures.None && HouseFeaturesOf.Features(job).HasFlag(f)))
            {
                seen.AddOrUpdate(feature, 1, (_, c) => c + 1);
            }

            foreach (var problem in Problems(job).Take(3))
            {
                problems.Enqueue($"house {n}: {problem}");
            }
        });
        Assert.True(problems.IsEmpty, string.Join('\n', problems.Take(20)));
        Assert.All(LeastShare, s => Assert.True(seen.GetValueOrDefault(s.Key) >= s.Value * count, $"{s.Key}: {seen.GetValueOrDefault(s.Key)} of {count}"));
    }

    private static IEnumerable<string> Problems(Job job)
    {
        JobEstimate estimate;
        try
        {
            estimate = SmallJobs.Estimate(job);
        }
        catch (Exception e)
        {
            return [$"{e.GetType().Name}: {e.Message} {e.StackTrace?.Split('\n').FirstOrDefault()}"];
        }

        return WiringInvariants.Problems(estimate).Concat(PanelInvariants.Problems(estimate)).Concat(estimate.Wiring.Circuits.SelectMany(c => new CircuitTester(estimate, c).Problems())).Concat(ExplanationCheck.Problems(estimate.Book)).Concat(SumCheck.Problems(estimate));
    }
}
