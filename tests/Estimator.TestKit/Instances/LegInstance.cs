using System.Globalization;

namespace Estimator.TestKit.Instances;

/// <summary>Loads to divide between two legs, and the least difference that is possible.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Loads">Volt-amperes.</param>
/// <param name="MostPerLeg">Loads that a leg takes.</param>
/// <param name="LeastDifference">The least difference.</param>
public sealed record LegInstance(string Name, long[] Loads, int MostPerLeg, long LeastDifference)
{
    /// <summary>The rows of <c>legs.csv</c>.</summary>
    public static IEnumerable<LegInstance> In(string path) => ReferenceCsv.Read(path).Select(r => new LegInstance(
        r["name"], [.. r["loads_va"].Split(' ').Select(x => long.Parse(x, CultureInfo.InvariantCulture))],
        int.Parse(r["max_per_leg"], CultureInfo.InvariantCulture), long.Parse(r["optimum_difference"], CultureInfo.InvariantCulture)));
}
