using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Estimator.Engine.Purchase.Cutting;
using Estimator.TestKit.Instances;

namespace Estimator.Benchmarks;

/// <summary>The cutting solver on published instances: one instance into a file, or a table by family of all in the folder that ESTIMATOR_DATA names, with ten houses bought together below.</summary>
internal static class CuttingMeasuring
{
    // The solver is bounded by steps, not by a clock. A common core takes about this many in a millisecond.
    private const long StepsAMillisecond = 1_000_000;

    private const int WarmUps = 3;

    /// <summary>Measures and prints.</summary>
    /// <param name="arguments"><c>[INSTANCE] [--ms N] [--out FILE]</c>.</param>
    internal static int Run(string[] arguments)
    {
        if (Read(arguments) is not var (instance, milliseconds, output) || milliseconds <= 0)
        {
            Console.Error.WriteLine("Accepted: cutting [INSTANCE.json] [--ms N] [--out SOLUTION.json]");
            return 2;
        }

        if (instance is not null && !File.Exists(instance))
        {
            Console.Error.WriteLine($"{instance}: there is no such file; an instance of the form of benchmarks/cutting is accepted.");
            return 2;
        }

        if (instance is not null)
        {
            One(instance, milliseconds * StepsAMillisecond, output);
            return 0;
        }

        if (Environment.GetEnvironmentVariable("ESTIMATOR_DATA") is not { Length: > 0 } data)
        {
            Console.Error.WriteLine("ESTIMATOR_DATA must name the folder of benchmark instances.");
            return 2;
        }

        Table(Path.Combine(data, "benchmarks", "cutting"), milliseconds * StepsAMillisecond);
        PackMeasuring.Run(Path.Combine(data, "benchmarks", "legs"));
        HousesMeasuring.Run();
        return 0;
    }

    private static (string? Instance, int Milliseconds, string? Output)? Read(string[] arguments)
    {
        var (instance, milliseconds, output) = ((string?)null, 1000, (string?)null);
        for (var a = 0; a < arguments.Length; a++)
        {
            if (arguments[a] is "--ms" or "--out" && a + 1 == arguments.Length)
            {
                return null;
            }

            switch (arguments[a])
            {
                case "--ms":
                    milliseconds = int.TryParse(arguments[++a], NumberStyles.None, CultureInfo.InvariantCulture, out var ms) ? ms : 0;
                    break;
                case "--out":
                    output = arguments[++a];
                    break;
                default:
                    instance = arguments[a];
                    break;
            }
        }

        return (instance, milliseconds, output);
    }

    private static void One(string path, long steps, string? output)
    {
        var instance = CuttingInstance.Read(path);
        CuttingSolver.Solve(instance.Problem, steps / 10);
        var (plan, took) = Timed(instance.Problem, steps);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{instance.Name}: price {plan.Price}, bound {plan.LowerBound}{(plan.Proven ? ", proven cheapest" : $", gap {100m * (plan.Price - plan.LowerBound) / plan.Price:0.000} %")}, {plan.Patterns.Length} stocks, {took:0.0} ms"));
        if (output is not null)
        {
            var bins = plan.Patterns.Select(p => new { stock = instance.Problem.Stocks[p.Stock].Length, pieces = p.Items.Select(i => instance.Problem.Items[i].Length) });
            File.WriteAllText(output, JsonSerializer.Serialize(new { instance = instance.Name, bins }));
        }
    }

    private static void Table(string folder, long steps)
    {
        var instances = CuttingInstance.In(folder).ToList();
        foreach (var instance in instances.Take(WarmUps))
        {
            CuttingSolver.Solve(instance.Problem, steps);
        }

        Console.WriteLine("family               files  mean gap %  worst gap %  at reference  proven  mean ms  max ms");
        foreach (var family in instances.GroupBy(i => i.Family))
        {
            List<(decimal Gap, bool Proven, double Took)> rows = [];
            foreach (var instance in family)
            {
                var (plan, took) = Timed(instance.Problem, steps);
                var problems = instance.Problems(plan).Concat(plan.LowerBound > instance.Value ? [$"bound {plan.LowerBound} above the known {instance.Value}"] : []).ToList();
                problems.ForEach(p => Console.WriteLine($"{instance.Name}: {p}"));
                rows.Add((100m * (plan.Price - instance.Value) / instance.Value, plan.Proven, took));
            }

            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{family.Key,-20} {rows.Count,5} {rows.Average(r => r.Gap),11:0.000} {rows.Max(r => r.Gap),12:0.000} {rows.Count(r => r.Gap <= 0),13} {rows.Count(r => r.Proven),7} {rows.Average(r => r.Took),8:0.0} {rows.Max(r => r.Took),7:0.0}"));
        }
    }

    private static (CuttingPlan Plan, double Milliseconds) Timed(CuttingProblem problem, long steps)
    {
        var clock = Stopwatch.StartNew();
        var plan = CuttingSolver.Solve(problem, steps);
        return (plan, clock.Elapsed.TotalMilliseconds);
    }
}
