using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Labor;
using Estimator.Engine.Measures;
using Estimator.Engine.Pricing;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Changes;

/// <summary>Prices the change from a job that was sold to the job as it is now.</summary>
/// <remarks>
/// What comes is priced at the rates of the bid. What goes gives back its net cost as far as it is not built, and taking out what is built costs hours; so a credit is never more than the
/// same work would cost to add. Overhead and profit are taken on the net increase alone, none are given back. Source: AIA Document A201-2017, 7.3.8 (actual net cost; overhead and profit on the
/// net increase), as an article of a construction lawyer cites it; shares by table change_rules, common practice, no source.
/// </remarks>
public sealed class ChangePricing
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = 20;

    private readonly JobEstimate _before;
    private readonly JobEstimate _after;
    private readonly WorkDone _done;
    private readonly BidSettings _settings;
    private readonly PageWriter _page = new(PageNumber);
    private readonly CrewRate _crew;
    private readonly SoldRates _rates;

    private ChangePricing(JobEstimate before, JobEstimate after, WorkDone done)
    {
        (_before, _after, _done, _settings) = (before, after, done, after.House.Job.Bid);
        _crew = CrewRate.Of(_settings, _page.Given("job.hours", "Hours of the job as it is now", after.Labor.Total.Value, Unit.Hours), _page);
        _rates = new SoldRates(before, after, _page);
    }

    /// <summary>The price of a change.</summary>
    /// <param name="before">What was agreed.</param>
    /// <param name="after">What is asked for now.</param>
    /// <param name="done">How far the work is.</param>
    public static ChangePrice Of(JobEstimate before, JobEstimate after, WorkDone done) => new ChangePricing(before, after, done).Compute();

    private ChangePrice Compute()
    {
        ImmutableArray<ChangeLine> lines = [.. Items(), .. Others()];
        var added = Line("added", "What comes", _page.Sum("change-added", "What comes", Unit.Dollars, [.. lines.Where(l => l.Kind is ChangeKind.Added).Select(l => l.Amount)]));
        var removed = Line("removed", "What goes, less taking it out", _page.Sum("change-removed", "What goes, less taking it out", Unit.Dollars, [.. lines.Where(l => l.Kind is ChangeKind.Removed).Select(l => l.Amount)]));
        var net = _page.Compute(Operation.Sum, "change-net", "Net cost of the change", Unit.Dollars, added.Amount, removed.Amount);
        var increase = _page.Compute(Operation.Maximum, "change-net-increase", "Net increase, on which overhead and profit are taken", Unit.Dollars, net, _page.Constant("No increase", 0, Unit.Dollars));
        var overhead = Line("overhead", "Overhead", _page.Compute(Operation.PercentOf, "overhead", "Overhead on the net increase", Unit.Dollars, increase, Share(_settings.OverheadPercent, "overhead_percent", BidDefaults.OverheadPercent)));
        var cost = _page.Compute(Operation.Sum, "change-cost", "Net increase and overhead", Unit.Dollars, increase, overhead.Amount);
        var profit = Line("profit", "Profit", Markup.Profit(_page, cost, Share(_settings.ProfitPercent, "profit_percent", BidDefaults.ProfitPercent), _settings.ProfitBasis));
        ImmutableArray<BidLine> sums = [added, removed, overhead, profit, .. Tax(lines, net, [added, removed, overhead, profit])];
        var hours = _page.Sum("change-hours", "Hours of the change", Unit.Hours, [.. lines.Select(l => l.Hours)]);
        return new ChangePrice
        {
            Lines = lines,
            Sums = sums,
            Price = _page.Sum("change-price", "Price of the change", Unit.Dollars, [.. sums.Select(s => s.Amount)]),
            Hours = hours,
            Days = Days(hours),
            Reasons = ChangeReasons.Of(_before, _after),
            Book = new ExplanationBook([_page.ToPage()]),
        };
    }

    private IEnumerable<ChangeLine> Items()
    {
        foreach (var change in ItemChanges.Between(_before, _after))
        {
            if (change.Added > 0)
            {
                yield return Added(change);
            }

            if (change.Removed > 0)
            {
                yield return Removed(change);
            }
        }

        if (OtherHours() is { } hours)
        {
            var labor = Cents.Round(_page, _page.Compute(Operation.Product, "change-labor", "Hours at the crew's loaded cost", Unit.Dollars, hours, _crew.HourCost));
            yield return new ChangeLine(hours.Value > 0 ? ChangeKind.Added : ChangeKind.Removed, "conditions", "Hours by other conditions: height, repetition, devices that share a box", "hour", Nothing(Unit.Each), hours, Nothing(Unit.Dollars), labor, labor, Priced: true);
        }
    }

    private ChangeLine Added(ItemChange change)
    {
        var quantity = _page.Given($"change.added.{change.ItemId}", "How much comes", change.Added, Unit.Each);
        var hours = _page.Sum("change-hours", "Hours of what comes", Unit.Hours, [.. _rates.Phases(change.ItemId).Select(p => Times(quantity, _rates.HoursToAdd(change.ItemId, p), Unit.Hours))]);
        var price = change.Owner ? null : _rates.PriceToAdd(change.ItemId);
        return Finished(ChangeKind.Added, change, quantity, hours, price is { } unit ? Taxed(Times(quantity, unit, Unit.Dollars)) : Nothing(Unit.Dollars), change.Owner || price is not null || !_rates.Bought(change.ItemId));
    }

    private ChangeLine Removed(ItemChange change)
    {
        var quantity = _page.Given($"change.removed.{change.ItemId}", "How much goes", change.Removed, Unit.Each);
        var phases = _rates.Phases(change.ItemId).ToList();
        var hours = _page.Sum("change-hours", "Hours of taking out, less those not worked", Unit.Hours, [.. phases.Select(p => Undone(Times(quantity, _rates.HoursSold(change.ItemId, p), Unit.Hours), p))]);
        var built = phases.Count > 0 && _done.Over(phases.Min());
        var share = (built ? ChangeRules.BuiltMaterialPercent : ChangeRules.ReturnedMaterialPercent).Read(_page, Unit.Percent);
        var price = change.Owner ? null : _rates.PriceSold(change.ItemId);
        var back = price is { } unit ? Less(_page.Compute(Operation.PercentOf, "change-credit", "Material given back", Unit.Dollars, Taxed(Times(quantity, unit, Unit.Dollars)), share), Unit.Dollars) : Nothing(Unit.Dollars);
        return Finished(ChangeKind.Removed, change, quantity, hours, back, change.Owner || price is not null || !_rates.Bought(change.ItemId));
    }

    // Hours that were not worked are given back; what was built is taken out again.
    private Fact Undone(Fact hours, WorkPhase phase) => _done.Over(phase)
        ? _page.Compute(Operation.PercentOf, "change-removal", "Hours of taking out", Unit.Hours, hours, ChangeRules.RemovalPercent.Read(_page, Unit.Percent))
        : Less(_page.Compute(Operation.PercentOf, "change-credit", "Hours given back", Unit.Hours, hours, ChangeRules.ReturnedHoursPercent.Read(_page, Unit.Percent)), Unit.Hours);

    // What the hours change beyond what comes and goes: averages over other heights, shared boxes, rooms that repeat.
    private Fact? OtherHours()
    {
        var changes = ItemChanges.Between(_before, _after).ToList();
        var counted = changes.Sum(c => _rates.Phases(c.ItemId).Sum(p => c.Added * _rates.HoursToAdd(c.ItemId, p).Value - c.Removed * _rates.HoursSold(c.ItemId, p).Value));
        var rest = decimal.Round(_after.Labor.Total.Value - _before.Labor.Total.Value - counted, 2, MidpointRounding.AwayFromZero);
        return rest == 0 ? null : _page.Given("change.hours.conditions", "Hours of the job now, less those agreed, less what comes and goes", rest, Unit.Hours);
    }

    private IEnumerable<ChangeLine> Others()
    {
        var (old, now) = (Costs(_before), Costs(_after));
        foreach (var id in old.Keys.Union(now.Keys, StringComparer.Ordinal).Order(StringComparer.Ordinal))
        {
            var change = now.GetValueOrDefault(id)?.Amount.Value - old.GetValueOrDefault(id)?.Amount.Value ?? now.GetValueOrDefault(id)?.Amount.Value ?? -old[id].Amount.Value;
            if (change != 0)
            {
                var amount = _page.Given($"change.cost.{id}", "Cost now less cost agreed", change, Unit.Dollars);
                yield return new ChangeLine(change > 0 ? ChangeKind.Added : ChangeKind.Removed, id, (now.GetValueOrDefault(id) ?? old[id]).Label, "dollars", Nothing(Unit.Each), Nothing(Unit.Hours), Nothing(Unit.Dollars), Nothing(Unit.Dollars), amount, Priced: true);
            }
        }
    }

    private static Dictionary<string, BidLine> Costs(JobEstimate estimate) =>
        estimate.Bid.DirectCost.Where(l => l.Id is not ("material" or "material-tax" or "labor")).ToDictionary(l => l.Id, StringComparer.Ordinal);

    private ChangeLine Finished(ChangeKind kind, ItemChange change, Fact quantity, Fact hours, Fact material, bool priced)
    {
        var line = _after.Takeoff.Lines.Concat(_before.Takeoff.Lines).First(l => l.ItemId == change.ItemId);
        var (cost, labor) = (Cents.Round(_page, material, "Material"), Cents.Round(_page, _page.Compute(Operation.Product, "change-labor", "Hours at the crew's loaded cost", Unit.Dollars, hours, _crew.HourCost), "Labor"));
        return new ChangeLine(kind, change.ItemId, line.Description, line.Unit, quantity, hours, cost, labor, _page.Compute(Operation.Sum, "change-line", line.Description, Unit.Dollars, cost, labor), priced);
    }

    // Tax that the bid charges on is charged on a change alike, and given back with it.
    private IEnumerable<BidLine> Tax(ImmutableArray<ChangeLine> lines, Fact net, ImmutableArray<BidLine> sums)
    {
        if (_settings.SalesTaxOn is null or SalesTaxOn.PartOfCost)
        {
            return [];
        }

        var material = _page.Sum("change-material", "Material of the change", Unit.Dollars, [.. lines.Select(l => l.Material)]);
        var price = _page.Sum("change-price", "Price of the change before sales tax", Unit.Dollars, [.. sums.Select(s => s.Amount)]);
        return [Line("sales-tax", "Sales tax", SalesTax.Charged(_page, _settings.SalesTaxOn.Value, TaxRate(), material, net, price))];
    }

    private Fact TaxRate() => Share(_settings.MaterialTaxPercent, "material_tax_percent", BidDefaults.MaterialTaxPercent);

    // Days of the whole crew, begun ones counted. Where driving is hours, the trips are those of the change and not of the job.
    private Fact Days(Fact hours)
    {
        var more = _page.Compute(Operation.Maximum, "change-days", "Hours more", Unit.Hours, hours, _page.Constant("No hours", 0, Unit.Hours));
        var crew = _crew.DriveHours is null ? _crew : CrewRate.Of(_settings with { Drive = (_settings.Drive ?? new DriveTime()) with { Trips = null } }, more, _page);
        var hand = _page.Compute(Operation.Quotient, "crew-days", "Hours of each hand", Unit.Hours, crew.PaidHours(more, _page), crew.Hands);
        var days = _page.Compute(Operation.Quotient, "crew-days", "Days of the crew", Unit.Each, hand, CrewRate.HoursADay(_settings, _page));
        return _page.Compute(Operation.RoundUp, "started-days", "Days begun", Unit.Each, days, _page.Constant("Whole days", 1, Unit.Each));
    }

    private Fact Taxed(Fact material) => _settings.SalesTaxOn is null or SalesTaxOn.PartOfCost
        ? _page.Compute(Operation.Sum, "change-material", "Material with tax", Unit.Dollars, material, SalesTax.OnCost(_page, material, TaxRate()))
        : material;

    private Fact Times(Fact quantity, Fact each, Unit unit) => _page.Compute(Operation.Product, "change-quantity", "Quantity times one", unit, quantity, each);

    private Fact Less(Fact amount, Unit unit) => _page.Compute(Operation.Difference, "change-credit", "Given back", unit, Nothing(unit), amount);

    private Fact Nothing(Unit unit) => _page.Constant("Nothing", 0, unit);

    private BidLine Line(string id, string label, Fact amount) => new(id, label, Cents.Round(_page, amount, label));

    private Fact Share(Percent? own, string field, RuleRow row) =>
        own is { } percent ? _page.Given($"$.bid.{field}", row.Label, percent.ToHundredths(), Unit.Percent) : row.Read(_page, Unit.Percent);
}
