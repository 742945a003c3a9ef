using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Estimator.Engine.Explanations;
using Estimator.Engine.Takeoff;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;

namespace Estimator.Web.Takeoff;

/// <summary>The lines of a takeoff that belong together, with their sum where they are things of a kind.</summary>
/// <param name="Id">The category, as the catalogue calls it.</param>
/// <param name="Title">What the trade calls it.</param>
/// <param name="Lines">The lines, in takeoff order.</param>
/// <param name="Total">Their sum; null where they are not of a kind.</param>
/// <param name="Source">What explains the sum.</param>
public sealed record ItemCategory(string Id, string Title, ImmutableArray<TakeoffLine> Lines, Fact? Total, FigureSource Source)
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = FigurePages.Takeoff;

    // Only things of a kind make a sum that somebody can use: boxes do, clamps and staples together do not.
    private static readonly ImmutableArray<string> Alike = ["cable", "box", "device", "plate", "breaker", "luminaire", "alarm"];

    private static readonly ConditionalWeakTable<PricedJob, object> Known = [];

    /// <summary>The categories of a priced job, in takeoff order.</summary>
    public static ImmutableArray<ItemCategory> Of(PricedJob priced) => (ImmutableArray<ItemCategory>)Known.GetValue(priced, p => Draw(p));

    /// <summary>What the trade calls a category; one that the list lacks keeps its own word.</summary>
    public static string Words(string category) => category switch
    {
        "cable" => "Cable",
        "conduit" => "Conduit and fittings",
        "wire" => "Building wire",
        "box" => "Boxes",
        "device" => "Devices",
        "plate" => "Plates",
        "breaker" => "Breakers",
        "connector" => "Wire connectors",
        "fastener" => "Clamps, staples and plates",
        "luminaire" => "Luminaires",
        "alarm" => "Alarms",
        "equipment" => "Equipment",
        "panel" => "Panels",
        "service" => "Service and grounding",
        "consumable" => "Consumables",
        "bore" => "Bored holes",
        "bend" => "Bends",
        "site" => "Site work",
        "missing" => "Not in the catalogue",
        _ => category,
    };

    private static ImmutableArray<ItemCategory> Draw(PricedJob priced)
    {
        var page = new PageWriter(PageNumber);
        var drawn = priced.Estimate.Takeoff.Lines.GroupBy(l => l.Category)
            .Select(g => (Category: g.Key, Lines: g.ToImmutableArray(), Total: Sum(page, g.Key, [.. g.Select(l => l.Quantity)]))).ToList();
        var source = priced.Source.With(page.ToPage());
        return [.. drawn.Select(d => new ItemCategory(d.Category, Words(d.Category), d.Lines, d.Total, source))];
    }

    private static Fact? Sum(PageWriter page, string category, ImmutableArray<Fact> quantities) => quantities.Length > 1 && Alike.Contains(category) && quantities.All(q => q.Unit == quantities[0].Unit)
        ? page.Sum($"category-{category}", $"{Words(category)}, all", quantities[0].Unit, quantities)
        : null;
}
