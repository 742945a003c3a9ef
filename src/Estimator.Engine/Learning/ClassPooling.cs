using System.Collections.Immutable;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Learning;

/// <summary>Finds a factor for each class of items of a phase from jobs whose hours were written down for the phase as a whole.</summary>
/// <remarks>
/// The ratio of a job, worked to estimated, is normal about the sum of its classes' shares times their factors; weight and variance are those of <see cref="Pooling"/>.
/// Before any job a factor is 1 plus what all classes of the phase have in common plus its own. The two spreads are such that the average mix of these jobs is known as
/// well as the table says, over table_jobs jobs: with one class, and with the same mix in every job, the phase as a whole comes out as <see cref="Pooling"/> has it.
/// Where mixes are alike the classes share what the phase took more, each the common part and its own by its share of the hours, and their intervals stay wide.
/// </remarks>
public static class ClassPooling
{
    /// <summary>The factor of each class, classes in order of their words.</summary>
    /// <param name="jobs">The jobs, each once; none gives none.</param>
    public static ImmutableArray<ClassFactor> Hours(IEnumerable<JobMix> jobs)
    {
        // In one order, whatever order the jobs came in: the last digit of a sum may turn on it.
        JobMix[] ordered = [.. jobs.OrderBy(j => j.JobId, StringComparer.Ordinal)];
        string[] classes = [.. ordered.SelectMany(j => j.Estimated.Where(c => c.Hours > 0).Select(c => c.Class)).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        if (classes.Length == 0)
        {
            return [];
        }

        var small = LearningRules.SmallPartHours.Number();
        (decimal[] Parts, decimal Value, decimal Weight)[] data = [.. ordered.Select(j => (Parts: classes.Select(c => j.Of(c) / j.All).ToArray(), j.Actual / j.All, j.All / (j.All + small)))];
        var weight = data.Sum(d => d.Weight);
        decimal[] mix = [.. classes.Select((_, c) => data.Sum(d => d.Weight * d.Parts[c]) / weight)];
        var (own, common) = Spreads(mix);
        var spread = LearningRules.Spread.Number();
        var posterior = new LinearPosterior(data, [.. classes.Select(_ => 1m)], Precision(classes.Length, own, common), spread * spread, LearningRules.SpreadJobs.Number());
        return [.. classes.Select((word, c) => new ClassFactor(word, Of(posterior, c, ordered.Count(j => j.Of(word) > 0)), IsApart(posterior, mix, c, own)))];
    }

    private static Pooled Of(LinearPosterior posterior, int c, int jobs)
    {
        var half = LearningRules.StudentT(posterior.Degrees) * Roots.Of(posterior.Square * posterior.Variance(Only(c, posterior.Means.Length)));
        return new Pooled(jobs, posterior.Means[c], Math.Max(0, posterior.Means[c] - half), posterior.Means[c] + half);
    }

    // Variances of a class's own part and of the common part, in parts of the variance of a job: together they leave the average mix 1 / table_jobs.
    private static (decimal Own, decimal Common) Spreads(decimal[] mix)
    {
        var (shared, table) = (LearningRules.ClassShared.Number(), LearningRules.TableJobs.Number());
        return ((1 - shared) / (table * mix.Sum(share => share * share)), shared / table);
    }

    // The inverse of a diagonal and a constant, by Sherman and Morrison.
    private static decimal[,] Precision(int size, decimal own, decimal common)
    {
        var precision = new decimal[size, size];
        foreach (var (row, column) in Enumerable.Range(0, size * size).Select(i => (i / size, i % size)))
        {
            precision[row, column] = ((row == column ? 1m : 0m) - (common / (own + (size * common)))) / own;
        }

        return precision;
    }

    // How a class differs from the average mix: what is left of the doubt about that.
    private static bool IsApart(LinearPosterior posterior, decimal[] mix, int c, decimal own)
    {
        decimal[] difference = [.. Only(c, mix.Length).Select((one, i) => one - mix[i])];
        var before = own * difference.Sum(d => d * d);
        return before == 0 || 1 - (posterior.Variance(difference) / before) >= LearningRules.ToldApart.Number();
    }

    private static decimal[] Only(int c, int size) => [.. Enumerable.Range(0, size).Select(i => i == c ? 1m : 0m)];
}
