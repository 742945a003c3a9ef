using Estimator.Documents.Explanations;
using Estimator.Documents.Workbooks;
using Estimator.Engine;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Pricing;

namespace Estimator.Documents.Pricing;

/// <summary>From cost to price. Every rate stands in a cell with a name; the reader changes one and the price follows.</summary>
internal sealed class CostSheet
{
    internal const string Name = "Cost";
    internal const string PriceName = "Price";
    internal const string LowName = "PriceLow";
    internal const string HighName = "PriceHigh";

    private const string ProfitName = "Profit";
    private const string RoundingName = "RoundPriceTo";
    private const int Amount = 2;
    private const int Basis = 3;
    private const int Link = 4;

    private readonly JobEstimate _estimate;
    private readonly LiveFormula _formulas;
    private readonly ExplanationIndex _index;
    private readonly SheetPage _page;
    private int _row = 4;

    private CostSheet(SheetPage page, JobEstimate estimate, LiveFormula formulas, ExplanationIndex index) =>
        (_page, _estimate, _formulas, _index) = (page, estimate, formulas, index);

    /// <summary>Writes the sheet; Takeoff and Labor must hold their totals by then.</summary>
    internal static void Write(SheetPage page, JobEstimate estimate, LiveFormula formulas, ExplanationIndex index) => new CostSheet(page, estimate, formulas, index).Write();

    /// <summary>The rates that the bid reads.</summary>
    internal static IEnumerable<ExplanationNode> Rates(Bid bid) =>
        BidRate.OfAnHour.Concat(BidRate.OfThePrice).Select(r => r.Leaf(bid.Page)).OfType<ExplanationNode>().Concat(Allowances(bid));

    private void Write()
    {
        _page.Columns(58, 15, 24, 10);
        _page.Put(1, 1, $"Cost and price: {_estimate.House.Job.Name}", _page.Styles.Title);
        _page.Put(2, 1, "Not for the customer. Copper figures may be changed, here and on Takeoff and Labor, and the price follows.", _page.Styles.Subtitle);
        Warnings();
        Hour();
        Shares();
        Price();
        Ends();
        PerUnit();
        Notes();
        _page.Print(landscape: false, headingRows: 0, repeatFrom: 0, onePage: true);
    }

    private void Warnings()
    {
        if (_estimate.Purchase.NotPriced.Any())
        {
            _page.Across(_row++, 1, Link, "The price is not whole. No price yet, in no total:", _page.Styles.Warning);
            foreach (var missing in _estimate.Purchase.NotPriced)
            {
                _page.Across(_row++, 1, Link, missing, _page.Styles.Warning);
            }
        }

        if (SamplePrices.In(_estimate.Purchase))
        {
            _page.Across(_row++, 1, Link, Cautions.SamplePrices, _page.Styles.Warning);
        }
    }

    private void Hour()
    {
        Section("An hour of the crew", "$", "Unit");
        foreach (var rate in BidRate.OfAnHour)
        {
            Rate(rate);
        }

        Figure("Loaded cost of a productive hour", _estimate.Bid.HourCost, _formulas.Of(_estimate.Bid.HourCost.Node, Name), "$ an hour", total: true);
        _page.CallIt("LaborRate", _row - 1, Amount);
        _formulas.Holds(_estimate.Bid.HourCost.Node, "LaborRate");
    }

    private void Shares()
    {
        Section("Shares and fees", "Figure", "Unit");
        foreach (var rate in BidRate.OfThePrice)
        {
            Rate(rate);
        }

        foreach (var allowance in Allowances(_estimate.Bid))
        {
            Input($"{allowance.Label}, {allowance.Rule}", allowance, "$", SheetStyles.Dollars);
            _formulas.Holds(allowance.Ref, _page.At(_row - 1, Amount));
        }
    }

    private void Price()
    {
        var bid = _estimate.Bid;
        Section("From cost to price", "$", "How");
        foreach (var line in bid.DirectCost)
        {
            Line(line, Words(line.Id));
        }

        Figure("Direct cost", bid.DirectTotal, _formulas.Of(bid.DirectTotal.Node, Name), "", total: true);
        _formulas.Holds(bid.DirectTotal.Node, _page.At(_row - 1, Amount));
        var additions = bid.Additions.ToDictionary(l => l.Id, StringComparer.Ordinal);
        Line(additions["overhead"], "share of direct cost");
        Line(additions["contingency"], "share of direct cost");
        var sum = Before(bid.PriceBeforeTax);
        var cost = _estimate.Book[sum.Inputs[0]];
        Figure("Cost", new Fact(cost.Value, cost.Unit, cost.Ref), _formulas.Of(cost.Ref, Name), "", total: true);
        _formulas.Holds(cost.Ref, _page.At(_row - 1, Amount));
        Line(additions["profit"], _estimate.House.Job.Bid.ProfitBasis is ProfitBasis.Margin ? "share of the price" : "share of cost");

        // Rounding is price less sum, so the price's cell, the next one, is known before it is written.
        var tax = additions.GetValueOrDefault("sales-tax");
        var name = tax is null ? PriceName : "PriceBeforeTax";
        _formulas.Holds(bid.PriceBeforeTax.Node, name);
        Line(additions["rounding"], "the price less all above");
        Figure(tax is null ? "Price" : "Price before sales tax", bid.PriceBeforeTax, Rounded(sum.Ref), "rounded up", total: true);
        _page.CallIt(name, _row - 1, Amount);
        if (tax is not null)
        {
            Line(tax, "charged on to the customer");
            Figure("Price", bid.Price, _formulas.Of(bid.Price.Node, Name), "with sales tax", total: true);
            _page.CallIt(PriceName, _row - 1, Amount);
            _formulas.Holds(bid.Price.Node, PriceName);
        }

        Plain("Price as estimated", bid.Price, "does not change here");
    }

    private void Ends()
    {
        var (bid, range) = (_estimate.Bid, _estimate.Bid.Range);
        Section("Range", "Figure", "How");
        Distance("Low end below the price", range.BelowPercent, "SpreadLow", "% of the price, by the draws");
        Distance("High end above the price", range.AbovePercent, "SpreadHigh", "% of the price, by the draws");
        Figure("Low", bid.Low, Rounded(Before(bid.Low).Ref), "one draw in ten is lower");
        _page.CallIt(LowName, _row - 1, Amount);
        Figure("High", bid.High, Rounded(Before(bid.High).Ref), $"one draw in ten is higher; {_estimate.House.Job.Unknowns.Length} not known yet");
        _page.CallIt(HighName, _row - 1, Amount);
    }

    private void Distance(string label, Fact percent, string name, string how)
    {
        Input(label, _estimate.Book[percent.Node], how, SheetStyles.Plain);
        _page.CallIt(name, _row - 1, Amount);
        _formulas.Holds(percent.Node, name);
    }

    private void PerUnit()
    {
        var bid = _estimate.Bid;
        Section("Figures to compare", "Figure", "Unit");
        Figure("Profit as a share of cost", bid.MarkupPercent, _formulas.Of(bid.MarkupPercent.Node, Name), "% of cost");
        Figure("Profit as a share of price", bid.MarginPercent, _formulas.Of(bid.MarginPercent.Node, Name), "% of price");
        Figure("Price for each opening", bid.PricePerOpening, _formulas.Of(bid.PricePerOpening.Node, Name), "$");
        var area = Enumerable.Range(0, bid.Page.Count).Select(i => bid.Page[i]).Last(n => n.Rule == "floor-area");
        Plain("Floor area", new Fact(area.Value, area.Unit, area.Ref), "sq ft");
        _formulas.Holds(area.Ref, _page.At(_row - 1, Amount));

        Figure("Price for each square foot", bid.PricePerSquareFoot, _formulas.Of(bid.PricePerSquareFoot.Node, Name), "$");
    }

    private void Notes()
    {
        _row++;
        foreach (var caution in Cautions.Safety)
        {
            _page.Across(_row++, 1, Link, caution, _page.Styles.Note);
        }
    }

    private void Rate(BidRate rate)
    {
        if (rate.Leaf(_estimate.Bid.Page) is not { } leaf)
        {
            if (rate.Name == RoundingName)
            {
                throw new InvalidOperationException("The bid reads no step to round to.");
            }

            return;
        }

        var unit = rate.Name != ProfitName ? rate.Unit : _estimate.House.Job.Bid.ProfitBasis is ProfitBasis.Margin ? "% of the price" : "% of cost";
        Input(leaf.Label, leaf, unit, rate.Format);
        _page.CallIt(rate.Name, _row - 1, Amount);
        _formulas.Holds(leaf.Ref, rate.Name);
    }

    private void Input(string label, ExplanationNode leaf, string unit, string format)
    {
        _page.Put(_row, 1, label, _page.Styles.Text);
        _page.Input(_row, Amount, leaf.Value, format);
        _page.Limit(_row, _row, Amount);
        _page.Put(_row, Basis, unit, _page.Styles.Soft);
        _page.Explained(_row++, Link, _index[leaf.Ref]);
    }

    private void Line(BidLine line, string how)
    {
        Figure(line.Label, line.Amount, _formulas.Of(line.Amount.Node, Name), how);
        _formulas.Holds(line.Amount.Node, _page.At(_row - 1, Amount));
    }

    private void Figure(string label, Fact figure, string formula, string how, bool total = false)
    {
        var styles = _page.Styles;
        _page.Put(_row, 1, label, total ? styles.TotalText : styles.Text);
        _page.Live(_row, Amount, formula, figure.Value, styles.Number(SheetStyles.Dollars, total ? SheetStyles.Tone.Total : SheetStyles.Tone.Row));
        _page.Put(_row, Basis, how, total ? styles.TotalSoft : styles.Soft);
        _page.Explained(_row++, Link, _index[figure.Node], total);
    }

    private void Plain(string label, Fact figure, string how)
    {
        _page.Put(_row, 1, label, _page.Styles.Soft);
        _page.Put(_row, Amount, figure.Value, _page.Styles.Number(SheetStyles.Dollars));
        _page.Put(_row, Basis, how, _page.Styles.Soft);
        _page.Explained(_row++, Link, _index[figure.Node]);
    }

    private void Section(string title, string amount, string basis)
    {
        _row++;
        _page.Put(_row, 1, title, _page.Styles.Section);
        _page.Put(_row, Amount, amount, _page.Styles.HeadRight);
        _page.Put(_row, Basis, $"  {basis}", _page.Styles.Head);
        _page.Put(_row++, Link, "Explained in row", _page.Styles.HeadRight);
    }

    // What was rounded; the rounding itself is written so that a reader may also set it to zero.
    private ExplanationNode Before(Fact rounded) => _estimate.Book[_estimate.Book[rounded.Node].Inputs[0]];

    private string Rounded(NodeRef sum)
    {
        var before = _formulas.Of(sum, Name);
        return $"IF({RoundingName}=0,ROUND({before},2),-INT(-ROUND(({before})/{RoundingName},8))*{RoundingName})";
    }

    private static string Words(string id) => id switch
    {
        "material" => "sum of Takeoff",
        "material-tax" => "share of material",
        "labor" => "hours of Labor x LaborRate",
        _ => "",
    };

    private static IEnumerable<ExplanationNode> Allowances(Bid bid) => Enumerable.Range(0, bid.Page.Count).Select(i => bid.Page[i])
        .Where(n => n.Operation is Operation.Given && (n.Rule.StartsWith("$.unknowns[", StringComparison.Ordinal) || n.Rule.StartsWith("$.bid.allowances[", StringComparison.Ordinal)));
}
