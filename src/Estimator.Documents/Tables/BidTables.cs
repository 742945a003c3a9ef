using System.Globalization;
using Estimator.Documents.Explanations;
using Estimator.Engine;
using Estimator.Engine.Explanations;
using Estimator.Engine.Pricing;

namespace Estimator.Documents.Tables;

/// <summary>The bid and what explains every figure, as CSV.</summary>
internal static class BidTables
{
    /// <summary>From cost to price: direct cost and what is added, which come to the price; then range and figures to compare.</summary>
    internal static string Bid(JobEstimate estimate)
    {
        var bid = estimate.Bid;
        return Csv.Write(
            ["part", "line", "label", "amount", "unit", "node"],
            Lines("direct_cost", bid.DirectCost).Concat(Lines("addition", bid.Additions)).Concat(
            [
                Figure("total", "price", "Price", bid.Price), Figure("range", "low", "Low end", bid.Low), Figure("range", "high", "High end", bid.High),
                Figure("compare", "hour_cost", "Loaded cost of a productive hour", bid.HourCost), Figure("compare", "markup_percent", "Profit on cost", bid.MarkupPercent), Figure("compare", "margin_percent", "Profit in price", bid.MarginPercent),
                Figure("compare", "per_opening", "Price of an opening", bid.PricePerOpening), Figure("compare", "per_square_foot", "Price of a square foot", bid.PricePerSquareFoot),
            ]));
    }

    /// <summary>Every node behind every figure, with the nodes that it was made from.</summary>
    internal static string Explanations(JobEstimate estimate) => Csv.Write(
        ["node", "label", "value", "unit", "operation", "rule", "inputs"],
        estimate.Book.Pages.OrderBy(p => p.Number).SelectMany(p => Enumerable.Range(0, p.Count).Select(i => p[i])).Select(n => (CsvCell[])
        [
            Node(n.Ref), n.Label, n.Unit is Unit.Length ? FigureText.Of(n) : Csv.Number(n.Value), FigureText.UnitWords(n.Unit),
            System.Text.Json.JsonNamingPolicy.SnakeCaseLower.ConvertName(n.Operation.ToString()), n.Rule, string.Join(' ', n.Inputs.Select(Node)),
        ]));

    private static IEnumerable<CsvCell[]> Lines(string part, IEnumerable<BidLine> lines) => lines.Select(l => Figure(part, l.Id, l.Label, l.Amount));

    private static CsvCell[] Figure(string part, string id, string label, Fact figure) => [part, id, label, Csv.Number(figure.Value), FigureText.UnitWords(figure.Unit), Node(figure.Node)];

    private static string Node(NodeRef node) => string.Create(CultureInfo.InvariantCulture, $"{node.Page}.{node.Index}");
}
