using System.Globalization;
using System.Text.Json;
using Estimator.Engine.Purchase.Cutting;

namespace Estimator.TestKit.Instances;

/// <summary>A published cutting instance: <c>{"name", "stocks": [[length, price], ...], "items": [[length, quantity], ...]}</c>, and what is known of it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Problem">The problem.</param>
/// <param name="Value">Price of the best plan known; 0 where none is.</param>
public sealed record CuttingInstance(string Name, CuttingProblem Problem, long Value)
{
    /// <summary>The family: the name up to the first dash, and for coils made here their size.</summary>
    public string Family => Name.Split('-')[0] switch
    {
        "coil" => Problem.Items.Sum(i => i.Quantity) <= 60 ? "coil, to 60 pieces" : "coil, more pieces",
        var family => family,
    };

    /// <summary>Every instance of a folder with its known value from <c>published.csv</c>, in order of name.</summary>
    public static IEnumerable<CuttingInstance> In(string folder)
    {
        var known = ReferenceCsv.Read(Path.Combine(folder, "published.csv")).ToDictionary(r => r["name"], r => long.Parse(r["value"], CultureInfo.InvariantCulture), StringComparer.Ordinal);
        return Directory.GetFiles(folder, "*.json").Order(StringComparer.Ordinal).Select(Read).Select(i => i with { Value = known.GetValueOrDefault(i.Name) });
    }

    /// <summary>Reads an instance.</summary>
    public static CuttingInstance Read(string path)
    {
        using var file = JsonDocument.Parse(File.ReadAllText(path));
        return new CuttingInstance(
            file.RootElement.GetProperty("name").GetString()!,
            new CuttingProblem(
                [.. Pairs(file, "stocks").Select(s => new CuttingStock(s[0].GetInt32(), s[1].GetInt64()))],
                [.. Pairs(file, "items").Select(i => new CuttingItem(i[0].GetInt32(), i[1].GetInt32()))]),
            0);
    }

    /// <summary>What is wrong with a plan, judged from lengths and prices alone.</summary>
    public IEnumerable<string> Problems(CuttingPlan plan) => CuttingCheck.Problems(
        [.. Problem.Stocks.Select(s => ((long)s.Length, s.Price, s.Count))],
        Problem.Items.SelectMany(i => Enumerable.Repeat((long)i.Length, i.Quantity)),
        [.. plan.Patterns.Select(p => (p.Stock, (IReadOnlyList<long>)[.. p.Items.Select(i => (long)Problem.Items[i].Length)]))],
        plan.Price);

    private static JsonElement.ArrayEnumerator Pairs(JsonDocument file, string name) => file.RootElement.GetProperty(name).EnumerateArray();
}
