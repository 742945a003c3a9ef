using System.Diagnostics;
using System.Globalization;
using Estimator.Engine;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase;
using Estimator.Engine.Takeoff;
using Estimator.TestKit;

namespace Estimator.Benchmarks;

/// <summary>One order for ten houses: the sample house ten times, every piece of cable up to a tenth shorter or longer.</summary>
internal static class HousesMeasuring
{
    private const int Houses = 10;
    private const int Seed = 20;

    internal static void Run()
    {
        var house = JobEstimate.Compute(JobFile.Read(BenchmarkJobs.Text("two-storey-house"), "sample").Job, Catalogues.Shipped);
        var random = new Random(Seed);
        var jobs = Enumerable.Range(1, Houses).Select(n => ($"house-{n}", house.Takeoff with { Pieces = [.. house.Takeoff.Pieces.Select(p => Jittered(p, random))] })).ToList();
        Buying.Together(jobs, Catalogues.Shipped);
        var clock = Stopwatch.StartNew();
        var plan = Buying.Together(jobs, Catalogues.Shipped);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"ten houses: {plan.Cuts.Sum(c => c.Coils.Sum(k => k.Pieces.Length))} runs, {plan.Cuts.Sum(c => c.Coils.Length)} coils, {clock.Elapsed.TotalMilliseconds:0} ms"));
        foreach (var cut in plan.Cuts)
        {
            Console.WriteLine($"  {cut.ItemId,-12} {cut.Coils.Sum(c => c.Pieces.Length),4} runs {cut.Coils.Length,3} coils {cut.Cost,12} {(cut.Proven ? "proven cheapest" : $"gap {cut.Gap}")}, wasted {cut.Wasted}, kept {cut.Kept}");
        }
    }

    private static CablePiece Jittered(CablePiece piece, Random random) =>
        piece with { Length = piece.Length with { Value = Length.FromSixteenths(piece.Length.AsLength().Value.ToSixteenths() * random.Next(90, 111) / 100).ToNanometres() } };
}
