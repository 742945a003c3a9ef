using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Labor;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Pricing.Ranges;
using Estimator.Engine.Purchase;
using Estimator.Engine.Rules;
using Estimator.Engine.Takeoff;

namespace Estimator.Engine.Pricing;

/// <summary>Makes the bid: material as bought, labor, other direct cost, overhead, contingency, profit, rounding, range.</summary>
/// <remarks>
/// Sales tax is part of the cost of material, or charged on as the job states. Overhead and contingency are taken on direct cost, profit on all of it. Driving is in the
/// productive share or in hours, never both. Each line is rounded to the cent and totals add rounded lines. Source: common practice, no source.
/// </remarks>
public sealed class BidPricing
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = 7;

    private readonly HouseLayout _layout;
    private readonly BidSettings _settings;
    private readonly PageWriter _page = new(PageNumber);

    private BidPricing(HouseLayout layout) => (_layout, _settings) = (layout, layout.House.Job.Bid);

    /// <summary>The bid.</summary>
    public static Bid Compute(HouseLayout layout, TakeoffResult takeoff, PurchasePlan purchase, LaborPlan labor) =>
        new BidPricing(layout).Compute(takeoff, purchase, labor);

    private Bid Compute(TakeoffResult takeoff, PurchasePlan purchase, LaborPlan labor)
    {
        var crew = CrewRate.Of(_settings, labor.Total, _page);
        var direct = DirectCost(purchase, labor, crew);
        var directTotal = Total("direct-cost", "Direct cost", direct);
        var overhead = Line("overhead", "Overhead", _page.Compute(Operation.PercentOf, "overhead", "Overhead on direct cost", Unit.Dollars, directTotal, Share(_settings.OverheadPercent, "overhead_percent", BidDefaults.OverheadPercent)));
        var contingency = Line("contingency", "Contingency", _page.Compute(Operation.PercentOf, "contingency", "Contingency on direct cost", Unit.Dollars, directTotal, Share(_settings.ContingencyPercent, "contingency_percent", BidDefaults.ContingencyPercent)));
        var cost = Total("all-cost", "Direct cost, overhead and contingency", [new BidLine("direct", "Direct cost", directTotal), overhead, contingency]);
        var profit = Line("profit", "Profit", Markup.Profit(_page, cost, Share(_settings.ProfitPercent, "profit_percent", BidDefaults.ProfitPercent), _settings.ProfitBasis));
        var sum = _page.Compute(Operation.Sum, "price-before-rounding", "Price before rounding", Unit.Dollars, cost, profit.Amount);
        var untaxed = Rounded(sum);
        var rounding = Line("rounding", "Rounding", _page.Compute(Operation.Difference, "price-rounding", "Rounding of the price", Unit.Dollars, untaxed, sum));
        var earned = _page.Compute(Operation.Difference, "profit-earned", "Price less cost", Unit.Dollars, untaxed, cost);
        var tax = TaxCharged ? Line("sales-tax", "Sales tax", SalesTax.Charged(_page, _settings.SalesTaxOn!.Value, TaxRate(), direct[0].Amount, directTotal, untaxed)) : null;
        var price = tax is null ? untaxed : _page.Compute(Operation.Sum, "price-with-tax", "Price with sales tax", Unit.Dollars, untaxed, tax.Amount);
        var range = RangeDrawing.Draw(_page, _layout, takeoff, CostParts.Of(_page, direct, takeoff, purchase, labor), new RangeBase(_page, directTotal, cost, contingency.Amount, untaxed));
        return new Bid
        {
            DirectCost = direct,
            Additions = tax is null ? [overhead, contingency, profit, rounding] : [overhead, contingency, profit, rounding, tax],
            DirectTotal = directTotal,
            Price = price,
            PriceBeforeTax = untaxed,
            Low = Rounded(End(Operation.Difference, price, range.BelowPercent)),
            High = Rounded(End(Operation.Sum, price, range.AbovePercent)),
            Range = range,
            MarkupPercent = Markup.Share(_page, "Profit as a share of cost", earned, cost),
            MarginPercent = Markup.Share(_page, "Profit as a share of price", earned, untaxed),
            HourCost = crew.HourCost,
            PaidHours = crew.PaidHours(labor.Total, _page),
            Crew = crew,
            PricePerOpening = Per("Price for each opening", price, takeoff.Openings),
            PricePerSquareFoot = Per("Price for each square foot", price, _page.Sum("floor-area", "Floor area", Unit.SquareFeet, [.. _layout.House.Rooms.Select(r => r.AreaSquareFeet)])),
            Scope = BidScope.Of(_layout, takeoff, purchase, labor),
            ValidDays = _settings.ValidDays ?? (int)BidDefaults.ValidDays.Number(),
            Page = _page.ToPage(),
        };
    }

    private ImmutableArray<BidLine> DirectCost(PurchasePlan purchase, LaborPlan labor, CrewRate crew)
    {
        var material = Line("material", "Material, as bought in whole packs and coils", purchase.Total);
        var allowances = _layout.House.Job.Unknowns.Select((u, i) => (u, i)).Where(x => x.u.Allowance is not null)
            .Select(x => Line($"allowance-{x.u.Id}", $"Allowance: {x.u.Text}", _page.Given($"$.unknowns[{x.i}].allowance", "Allowance", x.u.Allowance!.Value.ToDollars(), Unit.Dollars)));
        var chosen = _settings.Allowances.Select((a, i) => Line($"allowance-{a.Id}", $"Allowance: {a.Text}", _page.Given($"$.bid.allowances[{i}].amount", "Allowance", a.Amount.ToDollars(), Unit.Dollars)));
        return
        [
            material,
            .. TaxCharged ? Array.Empty<BidLine>() : [Line("material-tax", "Sales tax on material", SalesTax.OnCost(_page, material.Amount, TaxRate()))],
            Line("labor", "Labor with burden", _page.Compute(Operation.Product, "labor-cost", "Hours at the crew's loaded cost", Unit.Dollars, labor.Total, crew.HourCost)),
            .. Driving(crew),
            Line("permit", "Permit", Dollars(_settings.Permit, "permit", BidDefaults.Permit)),
            .. _settings.Fees is null ? Array.Empty<BidLine>() : [Line("fees", "Other fees", Own(_settings.Fees, "fees", "Other fees"))],
            Line("subcontract", "Work by others", Own(_settings.Subcontract, "subcontract", "Work by others")),
            Line("equipment-hire", "Tools and machines hired", Own(_settings.EquipmentHire, "equipment_hire", "Tools and machines hired")),
            .. allowances,
            .. chosen,
        ];
    }

    private bool TaxCharged => _settings.SalesTaxOn is not (null or SalesTaxOn.PartOfCost);

    private Fact TaxRate() => Share(_settings.MaterialTaxPercent, "material_tax_percent", BidDefaults.MaterialTaxPercent);

    private IEnumerable<BidLine> Driving(CrewRate crew) => crew.DriveHours is { } hours
        ? [Line("driving", "Driving", _page.Compute(Operation.Product, "drive-cost", "Hours of driving at the crew's loaded cost", Unit.Dollars, hours, crew.HourCost))]
        : [];

    private Fact Rounded(Fact dollars)
    {
        var step = Dollars(_settings.RoundPriceTo, "round_price_to", BidDefaults.RoundPriceTo);
        return step.Value > 0 ? _page.Compute(Operation.RoundUp, "price-rounding", "Rounded up", Unit.Dollars, dollars, step) : Cents.Round(_page, dollars);
    }

    private Fact End(Operation side, Fact price, Fact percent) => _page.Compute(
        side, "range-end", "End of the range", Unit.Dollars, price, _page.Compute(Operation.PercentOf, "range-end", "Distance from the likely price", Unit.Dollars, price, percent));

    private Fact Per(string label, Fact price, Fact count) => count.Value == 0
        ? _page.Constant(label, 0, Unit.Dollars)
        : Cents.Round(_page, _page.Compute(Operation.Quotient, "price-per", label, Unit.Dollars, price, count), label);

    private BidLine Line(string id, string label, Fact amount) => new(id, label, Cents.Round(_page, amount, label));

    private Fact Total(string rule, string label, ImmutableArray<BidLine> lines) =>
        _page.Sum(rule, label, Unit.Dollars, [.. lines.Select(l => l.Amount)]);

    private Fact Share(Percent? own, string field, RuleRow row) =>
        own is { } percent ? _page.Given($"$.bid.{field}", row.Label, percent.ToHundredths(), Unit.Percent) : row.Read(_page, Unit.Percent);

    private Fact Dollars(Money? own, string field, RuleRow row) =>
        own is { } money ? _page.Given($"$.bid.{field}", row.Label, money.ToDollars(), Unit.Dollars) : row.Read(_page, Unit.Dollars);

    private Fact Own(Money? own, string field, string label) => _page.Given($"$.bid.{field}", label, own?.ToDollars() ?? 0m, Unit.Dollars);
}
