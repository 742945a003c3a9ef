using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Learning;

/// <summary>Pools what jobs say with what the table says: few jobs move little, many jobs overrule it.</summary>
/// <remarks>
/// Normal data with the conjugate prior of mean and variance: the ratio of a job is normal about the firm's own factor with a variance that is not known; the factor is normal
/// about 1 with that variance over the jobs that the table counts as; the variance is scaled inverse chi-square. The factor then follows Student's t about the weighted
/// mean of table and jobs. A job weighs less where it estimated few hours: its variance is raised by small_part_hours over its hours.
/// Sums, products, quotients and a square root of decimals alone. Source: Hoff, A First Course in Bayesian Statistical Methods, 2009, section 5.3; Gelman and others,
/// Bayesian Data Analysis, 3rd edition, section 3.3; both from memory but for the published worked example in the tests.
/// </remarks>
public static class Pooling
{
    /// <summary>Pools the hours of jobs.</summary>
    /// <param name="ratios">The jobs; none gives the table's own figure with its spread.</param>
    public static Pooled Hours(IReadOnlyCollection<JobRatio> ratios)
    {
        var small = LearningRules.SmallPartHours.Number();
        return Of([.. ratios.Select(r => (r.Ratio, Weight: r.Estimated / (r.Estimated + small)))], LearningRules.Spread.Number());
    }

    /// <summary>Pools the material of jobs; each weighs the same.</summary>
    /// <param name="ratios">The jobs.</param>
    public static Pooled Material(IReadOnlyCollection<JobRatio> ratios) => Of([.. ratios.Select(r => (r.Ratio, 1m))], LearningRules.WasteSpread.Number());

    private static Pooled Of((decimal Ratio, decimal Weight)[] ratios, decimal spread)
    {
        // In one order, whatever order the jobs came in: the last digit of a sum may turn on it.
        Array.Sort(ratios);
        var (table, known) = (LearningRules.TableJobs.Number(), LearningRules.SpreadJobs.Number());
        var (mean, weight, degrees, square) = Posterior(ratios, 1m, table, spread * spread, known);
        var half = LearningRules.StudentT(degrees) * Roots.Of(square / weight);
        return new Pooled(ratios.Length, mean, Math.Max(0, mean - half), mean + half);
    }

    /// <summary>The posterior of mean and variance.</summary>
    /// <param name="data">Values and their weights.</param>
    /// <param name="mean">Mean of the prior.</param>
    /// <param name="weight">Weight of that mean.</param>
    /// <param name="square">Variance of the prior.</param>
    /// <param name="degrees">Its degrees of freedom.</param>
    internal static (decimal Mean, decimal Weight, decimal Degrees, decimal Square) Posterior(
        IReadOnlyCollection<(decimal Value, decimal Weight)> data, decimal mean, decimal weight, decimal square, decimal degrees)
    {
        var all = data.Sum(d => d.Weight);
        var average = all > 0 ? data.Sum(d => d.Value * d.Weight) / all : mean;
        var within = data.Sum(d => d.Weight * (d.Value - average) * (d.Value - average));
        var between = weight * all / (weight + all) * (average - mean) * (average - mean);
        var after = degrees + data.Count;
        return (((weight * mean) + (all * average)) / (weight + all), weight + all, after, ((degrees * square) + within + between) / after);
    }
}
