using System.Collections.Immutable;
using Estimator.Engine.Draws;
using Estimator.Engine.Explanations;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;
using Estimator.Engine.Takeoff;

namespace Estimator.Engine.Pricing.Ranges;

/// <summary>Draws the range of a price.</summary>
/// <remarks>
/// Each part of the cost is off by itself, and factors such as the crew's pace or copper move all parts that they act on together, so what moves together does not
/// cancel. Each factor draws by the hash of its own name, so another factor or another edit leaves its draws as they are, and one more thing that nobody
/// knows can only widen the range. Source: GAO-20-195G, step 9; widths common practice, no source.
/// </remarks>
internal sealed class RangeDrawing
{
    private readonly PageWriter _page;
    private readonly RangeBase _base;
    private readonly ImmutableSortedDictionary<string, Fact> _parts;
    private readonly List<Factor> _factors = [];
    private readonly Fact _draws;

    private RangeDrawing(PageWriter page, RangeBase start, ImmutableSortedDictionary<string, Fact> parts) =>
        (_page, _base, _parts, _draws) = (page, start, parts, RangeRules.Draws.Read(page, Unit.Each));

    /// <summary>The range.</summary>
    /// <param name="page">Where it is explained.</param>
    /// <param name="layout">What was stated, and what assumed.</param>
    /// <param name="takeoff">The quantities.</param>
    /// <param name="parts">Direct cost by part.</param>
    /// <param name="start">What the draws start from.</param>
    internal static PriceRange Draw(PageWriter page, HouseLayout layout, TakeoffResult takeoff, ImmutableSortedDictionary<string, Fact> parts, RangeBase start)
    {
        var drawing = new RangeDrawing(page, start, parts);
        if (start.Direct.Value > 0)
        {
            drawing.Gather(layout, takeoff);
        }

        return drawing.Result();
    }

    private void Gather(HouseLayout layout, TakeoffResult takeoff)
    {
        foreach (var part in RangeRules.Parts)
        {
            Add(part, part.Key, [part.Key]);
        }

        foreach (var factor in Standing(layout, takeoff))
        {
            Add(factor, factor.Key, RangeRules.PartsOf(factor));
        }

        foreach (var topic in layout.House.Job.Unknowns.GroupBy(u => u.Topic).OrderBy(g => g.Key))
        {
            for (var i = 1; i <= topic.Count(); i++)
            {
                var row = RangeRules.For(topic.Key);
                Add(row, FormattableString.Invariant($"{row.Key}-{i}"), RangeRules.PartsOf(row));
            }
        }
    }

    private static IEnumerable<RuleRow> Standing(HouseLayout layout, TakeoffResult takeoff) =>
    [
        .. RangeRules.Always,
        .. takeoff.Devices.Any(d => d.Place.Fished) ? [RangeRules.OldWork] : Array.Empty<RuleRow>(),
        .. layout.House.Rooms.Any(r => r.Arranged) ? [RangeRules.RoomsArranged] : Array.Empty<RuleRow>(),
        .. layout.Panels.Any(p => p.Source.Existing && p.Source.Make is null) ? [RangeRules.MakeNotStated] : Array.Empty<RuleRow>(),
    ];

    private void Add(RuleRow row, string name, ImmutableArray<string> on)
    {
        var dollars = on.Where(_parts.ContainsKey).Select(p => _parts[p]).ToList();
        if (dollars.Count == 0)
        {
            return;
        }

        var acted = _page.Sum("range-acts-on", "Cost that it acts on", Unit.Dollars, dollars);
        var share = _page.Compute(
            Operation.Quotient, "range-share", $"Share of direct cost: {row.Label}", Unit.Percent, acted,
            _page.Compute(Operation.Quotient, "range-percent", "One percent of direct cost", Unit.Dollars, _base.Direct, _page.Constant("Hundredths", 100)));
        _factors.Add(new Factor(
            row, _page.Constant($"Stream of draws: {name}", DrawStream.Named(name)), share,
            row.Read(_page, Unit.Percent, "low"), row.Read(_page, Unit.Percent, "likely"), row.Read(_page, Unit.Percent, "high")));
    }

    private PriceRange Result()
    {
        var (low, high) = (RangeRules.LowPercentile.Read(_page, Unit.Percent), RangeRules.HighPercentile.Read(_page, Unit.Percent));
        var (all, middle) = (_page.Constant("All of it", 100, Unit.Percent), Percentile("Middle of the draws", RangeRules.MiddlePercentile.Read(_page, Unit.Percent)));
        return new PriceRange
        {
            BelowPercent = End("range-below", "Low end below the price", _page.Compute(Operation.Difference, "range-below", "Below the price", Unit.Percent, all, OfThePrice(Percentile("Low end", low)))),
            AbovePercent = End("range-above", "High end above the price", _page.Compute(Operation.Difference, "range-above", "Above the price", Unit.Percent, OfThePrice(Percentile("High end", high)), all)),
            Middle = Cents.Round(_page, _page.Compute(Operation.PercentOf, "range-middle", "Middle of the draws", Unit.Dollars, _base.Dollars, _page.Compute(Operation.Sum, "range-middle", "Of the price without contingency", Unit.Percent, all, middle))),
            WithinPrice = Drawn(
                Operation.DrawnShare, "range-within", "Draws that come to no more than the price",
                _page.Compute(Operation.Difference, "range-within", "What contingency adds", Unit.Percent, _page.Compute(Operation.Quotient, "range-within", "The price of what the draws start from", Unit.Percent, all, _base.Share), all)),
            Draws = _draws,
            Bins = RangeBins.Of(Cost(), _base.Dollars.Value, (int)RangeRules.Bins.Number()),
            Factors = [.. _factors.Select(f => Alone(f, low, high)).OrderByDescending(f => f.Swing)],
        };
    }

    private Fact Percentile(string label, Fact percentile) => Drawn(Operation.DrawnPercentile, "range-drawn", $"{label}, off the cost worked out", percentile);

    private Fact End(string rule, string label, Fact percent) => _page.Compute(
        Operation.RoundNearest, rule, label, Unit.Percent, Positive(rule, label, percent),
        _page.Compute(Operation.Quotient, "range-hundredth", "A hundredth", Unit.Percent, _page.Constant("One percent", 1, Unit.Percent), _page.Constant("Hundredths", 100)));

    private Fact OfThePrice(Fact off) => _page.Compute(
        Operation.Product, "range-of-price", "Of the price", Unit.Percent, _base.Share, _page.Compute(Operation.Sum, "range-of-price", "Of the price without contingency", Unit.Percent, _page.Constant("All of it", 100, Unit.Percent), off));

    private RangeFactor Alone(Factor factor, Fact low, Fact high)
    {
        Fact Off(Fact percentile) => _page.Compute(
            Operation.TrianglePercentile, "range-alone", factor.Row.Label, Unit.Percent, percentile, factor.Low, factor.Likely, factor.High);
        Fact Dollars(string label, Fact off) => Cents.Round(_page, _page.Compute(
            Operation.PercentOf, "range-alone", label, Unit.Dollars, _page.Compute(Operation.PercentOf, "range-alone", "Part of the price that it moves", Unit.Dollars, _base.Dollars, factor.Share), off));
        return new RangeFactor(
            factor.Row.Key, factor.Row.Label, factor.Share,
            Dollars("Price less, by this alone", Positive("range-alone", "Less", Negative(Off(low)))), Dollars("Price more, by this alone", Positive("range-alone", "More", Off(high))));
    }

    private Fact Negative(Fact percent) => _page.Compute(Operation.Difference, "range-below", "Below", Unit.Percent, _page.Constant("Nothing", 0, Unit.Percent), percent);

    private Fact Positive(string rule, string label, Fact percent) => _page.Compute(Operation.Maximum, rule, label, Unit.Percent, percent, _page.Constant("Nothing", 0, Unit.Percent));

    private Fact Drawn(Operation operation, string rule, string label, Fact wanted) => _page.Compute(
        operation, rule, label, Unit.Percent, [wanted, _draws, .. _factors.SelectMany(f => new[] { f.Stream, f.Share, f.Low, f.Likely, f.High })]);

    private DrawnCost Cost() => DrawnCost.Of(
        _factors.Select(f => new DrawnFactor(decimal.ToInt32(f.Stream.Value), f.Share.Value, Triangle.FromPercent(f.Low.Value, f.Likely.Value, f.High.Value))), decimal.ToInt32(_draws.Value));

    private sealed record Factor(RuleRow Row, Fact Stream, Fact Share, Fact Low, Fact Likely, Fact High);
}
