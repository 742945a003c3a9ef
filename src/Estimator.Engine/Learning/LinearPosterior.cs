namespace Estimator.Engine.Learning;

/// <summary>The posterior of a linear regression with a conjugate prior: factors normal about their means, their variance scaled inverse chi-square.</summary>
/// <remarks>
/// Values are normal about the sum of their parts times the factors, with a common variance over each value's weight; before the data the factors are normal with the
/// inverse of a precision times that variance. Each factor, and each sum of factors, then follows Student's t.
/// Source: Gelman and others, Bayesian Data Analysis, 3rd edition, sections 14.2 and 14.8, from memory; without a prior it is weighted least squares.
/// </remarks>
internal sealed class LinearPosterior
{
    private readonly SymmetricSystem _precision;

    /// <summary>Pools data with a prior.</summary>
    /// <param name="data">The parts of each value, the value and its weight.</param>
    /// <param name="means">Means of the factors before the data.</param>
    /// <param name="precision">Their precision in parts of the variance; zero throughout for none.</param>
    /// <param name="square">The variance before the data.</param>
    /// <param name="degrees">Its degrees of freedom.</param>
    internal LinearPosterior(IReadOnlyCollection<(decimal[] Parts, decimal Value, decimal Weight)> data, decimal[] means, decimal[,] precision, decimal square, decimal degrees)
    {
        var size = means.Length;
        var sums = (decimal[,])precision.Clone();
        var right = Times(precision, means);
        foreach (var (parts, value, weight) in data)
        {
            for (var row = 0; row < size; row++)
            {
                right[row] += weight * parts[row] * value;
                for (var column = 0; column < size; column++)
                {
                    sums[row, column] += weight * parts[row] * parts[column];
                }
            }
        }

        _precision = new SymmetricSystem(sums);
        Means = _precision.Solve(right);
        var moved = Means.Select((m, i) => m - means[i]).ToArray();
        Degrees = degrees + data.Count;
        var within = data.Sum(d => d.Weight * Squared(d.Value - Dot(d.Parts, Means)));
        Square = ((degrees * square) + within + Dot(moved, Times(precision, moved))) / Degrees;
    }

    /// <summary>Means of the factors.</summary>
    internal decimal[] Means { get; }

    /// <summary>Degrees of freedom of the variance.</summary>
    internal decimal Degrees { get; }

    /// <summary>The variance of a value of weight one.</summary>
    internal decimal Square { get; }

    /// <summary>The variance of a sum of factors, in parts of <see cref="Square"/>.</summary>
    /// <param name="times">By what each factor is multiplied in the sum.</param>
    internal decimal Variance(decimal[] times) => Math.Max(0, Dot(times, _precision.Solve(times)));

    private static decimal Squared(decimal value) => value * value;

    private static decimal Dot(decimal[] a, decimal[] b) => a.Select((x, i) => x * b[i]).Sum();

    private static decimal[] Times(decimal[,] matrix, decimal[] vector) =>
        [.. Enumerable.Range(0, vector.Length).Select(row => Enumerable.Range(0, vector.Length).Sum(column => matrix[row, column] * vector[column]))];
}
