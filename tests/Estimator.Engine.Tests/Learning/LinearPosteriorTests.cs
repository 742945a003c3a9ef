using Estimator.Engine.Learning;

namespace Estimator.Engine.Tests.Learning;

/// <summary>
/// Least squares with certified values: NIST Statistical Reference Datasets, Linear Regression, Norris.dat (lower difficulty) and Longley.dat (higher difficulty), itl.nist.gov/div898/strd/lls.
/// Data and certified values read in several public test suites that repeat them alike.
/// </summary>
public sealed class LinearPosteriorTests
{
    private static readonly (decimal Y, decimal X)[] Norris =
    [
        (0.1m, 0.2m), (338.8m, 337.4m), (118.1m, 118.2m), (888.0m, 884.6m), (9.2m, 10.1m), (228.1m, 226.5m), (668.5m, 666.3m), (998.5m, 996.3m), (449.1m, 448.6m), (778.9m, 777.0m),
        (559.2m, 558.2m), (0.3m, 0.4m), (0.1m, 0.6m), (778.1m, 775.5m), (668.8m, 666.9m), (339.3m, 338.0m), (448.9m, 447.5m), (10.8m, 11.6m), (557.7m, 556.0m), (228.3m, 228.1m),
        (998.0m, 995.8m), (888.8m, 887.6m), (119.6m, 120.2m), (0.3m, 0.3m), (0.6m, 0.3m), (557.6m, 556.8m), (339.3m, 339.1m), (888.0m, 887.2m), (998.5m, 999.0m), (778.9m, 779.0m),
        (10.2m, 11.1m), (117.6m, 118.3m), (228.9m, 229.2m), (668.4m, 669.1m), (449.2m, 448.9m), (0.2m, 0.5m),
    ];

    private static readonly decimal[][] Longley =
    [
        [60323, 83.0m, 234289, 2356, 1590, 107608, 1947], [61122, 88.5m, 259426, 2325, 1456, 108632, 1948], [60171, 88.2m, 258054, 3682, 1616, 109773, 1949],
        [61187, 89.5m, 284599, 3351, 1650, 110929, 1950], [63221, 96.2m, 328975, 2099, 3099, 112075, 1951], [63639, 98.1m, 346999, 1932, 3594, 113270, 1952],
        [64989, 99.0m, 365385, 1870, 3547, 115094, 1953], [63761, 100.0m, 363112, 3578, 3350, 116219, 1954], [66019, 101.2m, 397469, 2904, 3048, 117388, 1955],
        [67857, 104.6m, 419180, 2822, 2857, 118734, 1956], [68169, 108.4m, 442769, 2936, 2798, 120445, 1957], [66513, 110.8m, 444546, 4681, 2637, 121950, 1958],
        [68655, 112.6m, 482704, 3813, 2552, 123366, 1959], [69564, 114.2m, 502601, 3931, 2514, 125368, 1960], [69331, 115.7m, 518173, 4806, 2572, 127852, 1961],
        [70551, 116.9m, 554894, 4007, 2827, 130081, 1962],
    ];

    [Fact]
    public void Posterior_OfNorris_HasTheCertifiedValues() => AreCertified(
        [.. Norris.Select(n => (new[] { 1m, n.X }, n.Y, 1m))], 26.6173985294224,
        (-0.262323073774029, 0.232818234301152), (1.00211681802045, 0.429796848199937E-03));

    [Fact]
    public void Posterior_OfLongley_HasTheCertifiedValues() => AreCertified(
        [.. Longley.Select(l => (new[] { 1m }.Concat(l.Skip(1)).ToArray(), l[0], 1m))], 836424.055505915,
        (-3482258.63459582, 890420.383607373), (15.0618722713733, 84.9149257747669), (-0.358191792925910E-01, 0.334910077722432E-01), (-2.02022980381683, 0.488399681651699),
        (-1.03322686717359, 0.214274163161675), (-0.511041056535807E-01, 0.226073200069370), (1829.15146461355, 455.478499142212));

    // A value of weight two is two values alike.
    [Fact]
    public void Posterior_OfAWeight_IsThatOfRepeatedValues()
    {
        (decimal[], decimal, decimal)[] once = [([1, 0], 3, 2), ([1, 1], 4, 1), ([1, 3], 9, 1)];
        (decimal[], decimal, decimal)[] twice = [([1, 0], 3, 1), ([1, 0], 3, 1), ([1, 1], 4, 1), ([1, 3], 9, 1)];
        var (a, b) = (new LinearPosterior(once, [0, 0], new decimal[2, 2], 1, 0), new LinearPosterior(twice, [0, 0], new decimal[2, 2], 1, 0));
        Assert.Equal(a.Means, b.Means);
        Assert.Equal(a.Degrees * a.Square, b.Degrees * b.Square);
    }

    [Fact]
    public void System_ThatDoesNotSettleItsUnknowns_IsRefused() =>
        Assert.Contains("above zero", Assert.Throws<ArgumentException>(() => new SymmetricSystem(new decimal[,] { { 1, 2 }, { 2, 4 } })).Message, StringComparison.Ordinal);

    // No prior: the sum of squares is certified, and a standard error takes as many degrees off as there are factors.
    private static void AreCertified((decimal[] Parts, decimal Value, decimal Weight)[] data, double residual, params (double Estimate, double Error)[] certified)
    {
        var size = certified.Length;
        var posterior = new LinearPosterior(data, new decimal[size], new decimal[size, size], 0, 0);
        var squares = (double)(posterior.Degrees * posterior.Square);
        Near(residual, squares);
        for (var i = 0; i < size; i++)
        {
            decimal[] one = [.. Enumerable.Range(0, size).Select(c => c == i ? 1m : 0m)];
            Near(certified[i].Estimate, (double)posterior.Means[i]);
            Near(certified[i].Error, Math.Sqrt(squares / (data.Length - size) * (double)posterior.Variance(one)));
        }
    }

    private static void Near(double expected, double actual) => Assert.InRange(Math.Abs((actual / expected) - 1), 0, 1e-9);
}
