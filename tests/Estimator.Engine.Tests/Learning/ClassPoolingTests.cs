using System.Globalization;
using CsCheck;
using Estimator.Engine.Learning;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Tests.Learning;

public sealed class ClassPoolingTests
{
    private const int Seeds = 2000;

    private static readonly string[] Classes = ["cable", "device", "luminaire"];

    // With one class nothing is left to tell apart: to the last digits that decimals have, the pooling of the phase.
    [Fact]
    public void Hours_OfOneClass_AreThoseOfThePhase() => Gen.Select(Gen.Int[1, 6000], Gen.Int[1, 12000]).List[0, 12].Sample(jobs =>
    {
        var phase = Pooling.Hours([.. jobs.Select((j, i) => new JobRatio($"job-{i}", j.Item1 / 100m, j.Item2 / 100m))]);
        var found = ClassPooling.Hours(jobs.Select((j, i) => new JobMix($"job-{i}", [new ClassHours("cable", j.Item1 / 100m)], j.Item2 / 100m)));
        if (jobs.Count == 0)
        {
            Assert.Empty(found);
            return;
        }

        var only = Assert.Single(found);
        Assert.Equal((phase.Jobs, true), (only.Pooled.Jobs, only.Apart));
        Assert.All(new[] { (phase.Factor, only.Pooled.Factor), (phase.Low, only.Pooled.Low), (phase.High, only.Pooled.High) }, p => Assert.InRange(Math.Abs(p.Item1 - p.Item2), 0, 1e-10m));
    }, iter: 300);

    // Jobs of one mix say nothing of a class by itself: the phase comes out as it does today, every class moves its way, and no interval is narrower than the phase's.
    [Fact]
    public void Hours_OfOneMix_ShareWhatThePhaseTook() => Gen.Select(Gen.Int[1, 99], Gen.Int[100, 4000], Gen.Int[50, 200]).List[2, 9].Sample(jobs =>
    {
        var share = jobs[0].Item1 / 100m;
        var phase = Pooling.Hours([.. jobs.Select((j, i) => new JobRatio($"job-{i}", j.Item2 / 100m, j.Item2 * j.Item3 / 10000m))]);
        var found = ClassPooling.Hours(jobs.Select((j, i) => new JobMix(
            $"job-{i}", [new ClassHours("cable", share * j.Item2 / 100m), new ClassHours("device", (1 - share) * j.Item2 / 100m)], j.Item2 * j.Item3 / 10000m)));
        Assert.InRange(Math.Abs((share * found[0].Pooled.Factor) + ((1 - share) * found[1].Pooled.Factor) - phase.Factor), 0, 1e-10m);
        Assert.All(found, f => Assert.False(f.Apart));
        Assert.All(found, f => Assert.True((f.Pooled.Factor - 1) * (phase.Factor - 1) >= 0));
        Assert.All(found.Where(f => f.Pooled.Low > 0 && phase.Low > 0), f => Assert.True(f.Pooled.High - f.Pooled.Low >= phase.High - phase.Low - 1e-10m));
    }, iter: 300);

    // Devices take three tenths more than the table and nothing else does; hours are known by phase alone, and the mix of jobs differs.
    [Fact]
    public void Hours_OfAPlantedClass_AreRecovered()
    {
        var found = ClassPooling.Hours(Jobs(new Random(5), [1, 1.3, 1], 0.06, 60)).ToDictionary(f => f.Class, StringComparer.Ordinal);
        Assert.Equal(1.3, (double)found["device"].Pooled.Factor, 0.06);
        Assert.True(found["device"].Pooled.Low > 1.1m);
        Assert.All(new[] { "cable", "luminaire" }, c => Assert.Equal(1, (double)found[c].Pooled.Factor, 0.07));
        Assert.All(found.Values, f => Assert.True(f.Apart));
        Assert.All(found, f => Assert.InRange(f.Key == "device" ? 1.3m : 1, f.Value.Pooled.Low, f.Value.Pooled.High));
    }

    [Fact]
    public void Hours_InAnotherOrder_AreTheSame()
    {
        JobMix[] jobs = [.. Jobs(new Random(9), [1.2, 0.9, 1.1], 0.2, 11)];
        Assert.Equal(ClassPooling.Hours(jobs), ClassPooling.Hours(jobs.Reverse().Select(j => j with { Estimated = [.. j.Estimated.Reverse()] })));
    }

    // Only jobs that had the class are counted for it, and a class of one job is not proposed.
    [Fact]
    public void Proposals_OfClasses_NameTheJobsThatHadThem()
    {
        ClosedJob[] jobs = [Closed("c", 9, 8, 0), Closed("a", 6, 14, 0), Closed("b", 12, 0, 4), new("old", "old", new DateOnly(2026, 1, 5), [new JobOutcome(LearnedKind.Hours, "rough_in", 20, 22)])];
        var proposed = Proposals.Of(jobs);
        Assert.Equal(["rough_in", "rough_in/cable", "rough_in/device"], proposed.Select(p => p.Key));
        Assert.Equal(["a,b,c,old", "a,b,c", "a,c"], proposed.Select(p => string.Join(',', p.Jobs)));
        Assert.Equal([4, 3, 2], proposed.Select(p => p.Pooled.Jobs));

        static ClosedJob Closed(string id, decimal cable, decimal device, decimal luminaire) => new(id, id, new DateOnly(2026, 3, 2), [new JobOutcome(LearnedKind.Hours, "rough_in", cable + device + luminaire, 25)
        {
            Classes = [.. new[] { ("cable", cable), ("device", device), ("luminaire", luminaire) }.Where(c => c.Item2 > 0).Select(c => new ClassHours(c.Item1, c.Item2))],
        }]);
    }

    // Firms, spreads and factors drawn as the model says, for the mixes that their jobs had: each class's interval holds its factor at the stated rate,
    // within four standard errors of a binomial count.
    [Theory]
    [InlineData(3)]
    [InlineData(15)]
    public void Interval_OverManyFirms_CoversAtItsRate(int jobs)
    {
        var random = new Random(20261127 + jobs);
        var (table, known, spread, shared) = ((double)LearningRules.TableJobs.Number(), (int)LearningRules.SpreadJobs.Number(), (double)LearningRules.Spread.Number(), (double)LearningRules.ClassShared.Number());
        var small = (double)LearningRules.SmallPartHours.Number();
        var held = new int[Classes.Length];
        for (var seed = 0; seed < Seeds; seed++)
        {
            var mixes = Enumerable.Range(0, jobs).Select(_ => Mix(random)).ToList();
            var weights = mixes.Select(m => m.Sum() / (m.Sum() + small)).ToList();
            var average = Classes.Select((_, c) => mixes.Select((m, j) => weights[j] * m[c] / m.Sum()).Sum() / weights.Sum()).ToArray();
            var sigma = Math.Sqrt(known * spread * spread / Enumerable.Range(0, known).Sum(_ => Math.Pow(Normal(random), 2)));
            var common = Normal(random) * Math.Sqrt(shared / table);
            var planted = Classes.Select(_ => 1 + (sigma * (common + (Normal(random) * Math.Sqrt((1 - shared) / table / average.Sum(a => a * a)))))).ToArray();
            var found = ClassPooling.Hours(mixes.Select((m, j) => Job(random, $"job-{j}", m, planted, sigma)));
            for (var c = 0; c < Classes.Length; c++)
            {
                var factor = Math.Max(0, planted[c]);
                held[c] += (double)found[c].Pooled.Low <= factor && factor <= Math.Max(0, (double)found[c].Pooled.High) ? 1 : 0;
            }
        }

        var error = Math.Sqrt(0.9 * 0.1 / Seeds);
        Assert.All(held, h => Assert.InRange((double)h / Seeds, 0.9 - (4 * error), 0.9 + (4 * error)));
        TestContext.Current.TestOutputHelper?.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{jobs} jobs: {string.Join(", ", held.Select(h => $"{100.0 * h / Seeds:0.0} %"))}"));
    }

    private static IEnumerable<JobMix> Jobs(Random random, double[] factors, double sigma, int jobs) => [.. Enumerable.Range(0, jobs).Select(j => Job(random, $"job-{j:00}", Mix(random), factors, sigma))];

    // Cable, devices and luminaires of a rough-in, from a porch light to a house.
    private static double[] Mix(Random random) => [2 + (20 * random.NextDouble()), 1 + (18 * random.NextDouble()), 0.5 + (8 * random.NextDouble())];

    private static JobMix Job(Random random, string id, double[] mix, double[] factors, double sigma)
    {
        var (all, small) = (mix.Sum(), (double)LearningRules.SmallPartHours.Number());
        var ratio = mix.Select((m, c) => m * factors[c]).Sum() / all + (Normal(random) * sigma * Math.Sqrt((all + small) / all));
        return new JobMix(id, [.. mix.Select((m, c) => new ClassHours(Classes[c], (decimal)m))], (decimal)(ratio * all));
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
