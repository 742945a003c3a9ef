using CsCheck;
using Estimator.Engine.Draws;
using Triangular = Estimator.TestKit.Triangle;

namespace Estimator.Engine.Tests.Draws;

/// <summary>
/// Draws of costs against closed forms. Mean (a + b + c)/3, variance (a2 + b2 + c2 - ab - ac - bc)/18 and quantile of the triangular distribution: Evans, Hastings and Peacock, Statistical
/// Distributions, from memory. Means and variances of independent quantities add: any textbook of statistics.
/// </summary>
public sealed class DrawnCostTests
{
    private const int Draws = 4000;

    private static readonly Gen<(decimal Low, decimal Likely, decimal High)> Spreads =
        Gen.Select(Gen.Int[-300, 0], Gen.Int[0, 600], (a, b) => (Low: a / 10m, Likely: 0m, High: b / 10m));

    private static readonly Gen<DrawnFactor[]> Factors = Gen.Select(Gen.Int[1, 60], Gen.Int[1, 1000], Spreads, (s, share, t) => Factor(s, share / 10m, t))
        .Array[1, 8].Select(f => f.DistinctBy(x => x.Stream).ToArray());

    // GAO-20-195G, table 12, in $K an air vehicle: least, most likely and most of seven elements. The guide prints the sum of the most likely costs as $77 million.
    private static readonly (decimal Low, decimal Likely, decimal High)[] AirVehicle =
    [
        (17955, 19645, 21785), (8500, 10553, 13000), (4000, 4306, 5100), (4100, 4305, 4650), (550, 600, 650), (32300, 35547, 52500), (1950, 2136, 2600),
    ];

    [Fact]
    public void Draws_OfTheGuidesAirVehicle_HaveItsMeanAndVariance()
    {
        var point = AirVehicle.Sum(e => e.Likely);
        Assert.Equal(77m, decimal.Round(point / 1000, 0, MidpointRounding.AwayFromZero));
        var cost = DrawnCost.Of(AirVehicle.Select((e, i) => Of(e, i, point)), Draws);
        var costs = cost.Changes.Select(c => point * (1 + c / 1_000_000m)).ToList();
        var mean = costs.Average();
        Assert.Equal((double)AirVehicle.Sum(e => Triangular.Mean(e.Low, e.Likely, e.High)), (double)mean, (double)mean * 0.0001);
        var deviation = Math.Sqrt((double)costs.Select(c => (c - mean) * (c - mean)).Average());
        var textbook = Math.Sqrt((double)AirVehicle.Sum(e => Triangular.Variance(e.Low, e.Likely, e.High)));
        Assert.InRange(deviation / textbook, 0.98, 1.02);

        // Least and most lie far below and above the sum of most likely costs, and that sum is less likely to suffice than not: why the guide asks for a simulation.
        Assert.InRange(cost.ShareTo(0), 5m, 45m);
    }

    [Theory]
    [InlineData(-10, 0, 20, 10)]
    [InlineData(-10, 0, 20, 50)]
    [InlineData(-10, 0, 20, 90)]
    [InlineData(0, 0, 30, 90)]
    [InlineData(-8, -8, 12, 10)]
    [InlineData(-5, 5, 5, 75)]
    public void Percentile_OfOneFactor_IsTheClosedForm(int low, int likely, int high, int percentile)
    {
        var cost = DrawnCost.Of([Factor(1, 100, (low, likely, high))], Draws);
        Assert.Equal((double)Triangular.Percentile(low, likely, high, percentile / 100m), (double)cost.Percentile(percentile), 0.002);
        Assert.Equal((double)Triangular.Percentile(low, likely, high, percentile / 100m), Triangle.FromPercent(low, likely, high).Quantile(percentile, 100) / 10_000d, 0.0002);
    }

    // A factor that moves all of a cost moves every percentile by the share that it acts on.
    [Fact]
    public void Percentile_OfASharedFactor_ScalesWithItsShare() => Gen.Select(Spreads, Gen.Int[1, 100], Gen.Int[5, 95]).Sample((spread, share, percentile) =>
    {
        var whole = DrawnCost.Of([Factor(3, 100, spread)], Draws).Percentile(percentile);
        Assert.Equal((double)(whole * share / 100), (double)DrawnCost.Of([Factor(3, share, spread)], Draws).Percentile(percentile), 0.0002);
    });

    [Fact]
    public void Width_WhatMovesTogether_IsNotLessThanWhatMovesApart() => Factors.Sample(factors =>
    {
        var together = DrawnCost.Of(factors.Select(f => f with { Stream = 7 }), Draws);
        Assert.True(Width(together) >= Width(DrawnCost.Of(factors, Draws)) * 0.995m);
    });

    // A further independent factor widens every interval between percentiles, because triangular distributions are log-concave. Source: Lewis and Thompson,
    // Dispersive distributions, Journal of Applied Probability 18 (1981). Draws leave a trace of luck in how factors meet.
    [Fact]
    public void Width_OneFactorMore_IsNotNarrower() => Gen.Select(Factors, Spreads, Gen.Int[1, 1000]).Sample((factors, spread, share) =>
    {
        var (before, after) = (DrawnCost.Of(factors, Draws), DrawnCost.Of(factors.Append(Factor(99, share / 10m, spread)), Draws));
        Assert.True(Width(after) >= Width(before) * 0.98m, $"{Width(before)} to {Width(after)}");
    });

    [Fact]
    public void Changes_InAnyOrderOfFactors_AreTheSame() =>
        Factors.Sample(factors => Assert.Equal(DrawnCost.Of(factors, 500).Changes, DrawnCost.Of(factors.Reverse(), 500).Changes));

    // Literals of the first run, so that another machine or compiler that draws otherwise is noticed.
    [Fact]
    public void Changes_OfKnownStreams_AreTheseNumbers() =>
        Assert.Equal([-20035, -2033, 15005, 43016, 69524], DrawnCost.Of([Factor(DrawStream.Named("crew"), 60, (-10, 0, 20)), Factor(DrawStream.Named("copper"), 10, (-8, 0, 12))], 5).Changes);

    [Fact]
    public void FromPercent_OutOfOrder_SaysWhatIsAccepted() =>
        Assert.Contains("in this order", Assert.Throws<ArgumentOutOfRangeException>(() => Triangle.FromPercent(5, 0, 10)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(1)]
    [InlineData(5001)]
    public void Of_TooFewOrManyDraws_SaysHowMany(int draws) =>
        Assert.Contains("2 to 5000", Assert.Throws<ArgumentOutOfRangeException>(() => DrawnCost.Of([], draws)).Message, StringComparison.Ordinal);

    private static decimal Width(DrawnCost cost) => cost.Percentile(90) - cost.Percentile(10);

    private static DrawnFactor Factor(int stream, decimal share, (decimal Low, decimal Likely, decimal High) spread) =>
        new(stream, share, Triangle.FromPercent(spread.Low, spread.Likely, spread.High));

    private static DrawnFactor Of((decimal Low, decimal Likely, decimal High) element, int stream, decimal point) => Factor(
        stream, element.Likely / point * 100, ((element.Low / element.Likely - 1) * 100, 0, (element.High / element.Likely - 1) * 100));
}
