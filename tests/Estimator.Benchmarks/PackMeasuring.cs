using System.Diagnostics;
using System.Globalization;
using Estimator.Engine.Panels;
using Estimator.Engine.Purchase;
using Estimator.TestKit.Instances;

namespace Estimator.Benchmarks;

/// <summary>Packs and legs: how many rows are exact, and the longest time of one.</summary>
internal static class PackMeasuring
{
    internal static void Run(string folder)
    {
        Measure("packs", PackInstance.In(Path.Combine(folder, "packs.csv")), i => PackChoice.Cheapest(i.Need, i.Offers).Sum(p => p.Count * p.Offer.Price.ToDollars()) == i.LeastPrice);
        Measure("legs", LegInstance.In(Path.Combine(folder, "legs.csv")), i => LegBalancing.Split(i.Loads, 0, Math.Max(0, i.Loads.Length - i.MostPerLeg), i.MostPerLeg).ImbalanceVa == i.LeastDifference);
    }

    private static void Measure<T>(string name, IEnumerable<T> instances, Func<T, bool> exact)
    {
        var rows = instances.ToList();
        rows.ForEach(r => exact(r));
        List<(bool Exact, double Took)> results = [];
        foreach (var row in rows)
        {
            var clock = Stopwatch.StartNew();
            var found = exact(row);
            results.Add((found, clock.Elapsed.TotalMilliseconds));
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name,-20} {rows.Count,5} rows, {results.Count(r => r.Exact)} exact, mean {results.Average(r => r.Took):0.00} ms, max {results.Max(r => r.Took):0.00} ms"));
    }
}
