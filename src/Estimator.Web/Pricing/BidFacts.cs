using Estimator.Engine.Explanations;
using Estimator.Engine.Pricing;

namespace Estimator.Web.Pricing;

/// <summary>Figures inside a bid that no property of it hands out, found by their rule.</summary>
internal static class BidFacts
{
    /// <summary>The figure that a rule made last; null where the bid has none.</summary>
    internal static Fact? Made(Bid bid, string rule) => Nodes(bid.Page).LastOrDefault(n => n.Rule == rule) is { } node ? Of(node) : null;

    /// <summary>A rate that the bid read: the user's own, else the cited one; null where it read none.</summary>
    /// <param name="bid">The bid.</param>
    /// <param name="field">Its field among the bid settings, which is the key of its row in the bid table too.</param>
    internal static Fact? Rate(Bid bid, string field) =>
        Nodes(bid.Page).FirstOrDefault(n => n.Rule == $"$.bid.{field}" || n.Rule == $"bid_defaults:{field}") is { } node ? Of(node) : null;

    /// <summary>The leaves that a page read from a rule table, each once, with their labels.</summary>
    internal static IEnumerable<(string Label, Fact Fact)> Rows(ExplanationPage page, string prefix) =>
        Nodes(page).Where(n => n.Operation is Operation.Row && n.Rule.StartsWith(prefix, StringComparison.Ordinal)).Select(n => (n.Label, Of(n)));

    private static IEnumerable<ExplanationNode> Nodes(ExplanationPage page) => Enumerable.Range(0, page.Count).Select(i => page[i]);

    private static Fact Of(ExplanationNode node) => new(node.Value, node.Unit, node.Ref);
}
