using System.Globalization;
using Estimator.Engine.Learning;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Tests.Learning;

public sealed class PoolingTests
{
    private const int Seeds = 2000;

    // Hoff, A First Course in Bayesian Statistical Methods, 2009, section 5.3, wing lengths of midges: prior mean 1.9 and spread 0.1, each worth one
    // observation, nine lengths. Data and prior read on a course page that repeats them; posterior mean 1.814 and variance 0.015 of the book, from memory.
    [Fact]
    public void Posterior_OfMidgeWings_IsThePublishedOne()
    {
        decimal[] lengths = [1.64m, 1.70m, 1.72m, 1.74m, 1.82m, 1.82m, 1.82m, 1.90m, 2.08m];
        var (mean, weight, degrees, square) = Pooling.Posterior([.. lengths.Select(l => (l, 1m))], 1.9m, 1, 0.01m, 1);
        Assert.Equal((1.814m, 10m, 10m, 0.015m), (decimal.Round(mean, 3, MidpointRounding.AwayFromZero), weight, degrees, decimal.Round(square, 3, MidpointRounding.AwayFromZero)));
    }

    // With both spreads worth nothing the mean and variance are those of the nine lengths: 1.804 on that page, and by hand.
    [Fact]
    public void Posterior_WithoutAPrior_IsTheDataAlone()
    {
        decimal[] lengths = [1.64m, 1.70m, 1.72m, 1.74m, 1.82m, 1.82m, 1.82m, 1.90m, 2.08m];
        var (mean, _, degrees, _) = Pooling.Posterior([.. lengths.Select(l => (l, 1m))], 1.9m, 0, 0.01m, 0);
        Assert.Equal((1.804m, 9m), (decimal.Round(mean, 3, MidpointRounding.AwayFromZero), degrees));
    }

    [Fact]
    public void Hours_OfNoJob_AreTheTables()
    {
        var none = Pooling.Hours([]);
        Assert.Equal((0, 1m), (none.Jobs, none.Factor));
        Assert.True(none.Low < 1 && none.High > 1);
    }

    // Two jobs at 1.5 against a table that counts as two jobs: about half way; ten of them leave little of the table.
    [Fact]
    public void Hours_OfMoreJobs_MoveFartherFromTheTable()
    {
        var (two, ten) = (Pooling.Hours(Alike(2)), Pooling.Hours(Alike(10)));
        Assert.InRange(two.Factor, 1.2m, 1.26m);
        Assert.InRange(ten.Factor, 1.38m, 1.45m);
        Assert.True(ten.High - ten.Low < two.High - two.Low);

        static JobRatio[] Alike(int jobs) => [.. Enumerable.Range(0, jobs).Select(j => new JobRatio($"{j}", 40, 60))];
    }

    // A phase of a quarter hour that took a whole one says less than one of forty that took forty-four.
    [Fact]
    public void Hours_OfASmallPart_WeighLess() =>
        Assert.InRange(Pooling.Hours([new JobRatio("a", 0.25m, 1), new JobRatio("b", 40, 44)]).Factor, 1.03m, 1.2m);

    [Fact]
    public void Pooling_InAnotherOrder_IsTheSame()
    {
        JobRatio[] ratios = [.. Jobs(new Random(7), 1.3, 0.2, 9)];
        Assert.Equal(Pooling.Hours(ratios), Pooling.Hours([.. ratios.Reverse()]));
    }

    // Jobs made with a factor of 1.3: found within the interval once there are enough, and close to it.
    [Fact]
    public void Hours_OfAPlantedFactor_AreRecovered()
    {
        var pooled = Pooling.Hours([.. Jobs(new Random(11), 1.3, 0.2, 40)]);
        Assert.InRange(1.3m, pooled.Low, pooled.High);
        Assert.Equal(1.3, (double)pooled.Factor, 0.08);
    }

    // Firms and spreads drawn as the model says, the factor planted in their jobs: the interval holds it at its stated rate, within four
    // standard errors of a binomial count (its t is taken of fewer degrees where a row is missing, never of more).
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(12)]
    public void Interval_OverManyFirms_CoversAtItsRate(int jobs)
    {
        var random = new Random(20261126 + jobs);
        var (table, known, spread) = ((double)LearningRules.TableJobs.Number(), (int)LearningRules.SpreadJobs.Number(), (double)LearningRules.Spread.Number());
        var held = 0;
        for (var seed = 0; seed < Seeds; seed++)
        {
            var chi = Enumerable.Range(0, known).Sum(_ => Math.Pow(Normal(random), 2));
            var sigma = Math.Sqrt(known * spread * spread / chi);
            var planted = 1 + (Normal(random) * sigma / Math.Sqrt(table));
            var pooled = Pooling.Hours([.. Jobs(random, planted, sigma, jobs)]);
            held += (double)pooled.Low <= Math.Max(0, planted) && Math.Max(0, planted) <= (double)pooled.High ? 1 : 0;
        }

        var error = Math.Sqrt(0.9 * 0.1 / Seeds);
        Assert.InRange((double)held / Seeds, 0.9 - (4 * error), 0.9 + (4 * error));
        TestContext.Current.TestOutputHelper?.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{jobs} jobs: {100.0 * held / Seeds:0.0} %"));
    }

    [Theory]
    [InlineData(2, 1.414213562373)]
    [InlineData(0.0625, 0.25)]
    [InlineData(0, 0)]
    [InlineData(1000000, 1000)]
    public void Root_OfANumber_IsTheKnownOne(double square, double root) => Assert.Equal((decimal)root, Roots.Of((decimal)square));

    // Estimated hours from 2 to 60; the variance of a ratio falls with them as the model has it.
    private static IEnumerable<JobRatio> Jobs(Random random, double factor, double sigma, int jobs)
    {
        var small = (double)LearningRules.SmallPartHours.Number();
        for (var job = 0; job < jobs; job++)
        {
            var estimated = 2 + (58 * random.NextDouble());
            var ratio = factor + (Normal(random) * sigma * Math.Sqrt((estimated + small) / estimated));
            yield return new JobRatio($"job-{job}", (decimal)estimated, (decimal)(ratio * estimated));
        }
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
