using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Web.Catalogues;
using Estimator.Web.Figures;

namespace Estimator.Web.Settings;

/// <summary>A rate that new jobs start with: how it reads and is written.</summary>
/// <param name="Key">Key of its row in the bid table, which counts where it is left open.</param>
/// <param name="Unit">Its unit in words.</param>
/// <param name="Get">Its value; null where it is left open.</param>
/// <param name="Set">The rates with another value.</param>
/// <param name="Most">The highest that is accepted.</param>
public sealed record RateField(string Key, string Unit, Func<BidSettings, decimal?> Get, Func<BidSettings, decimal?, BidSettings> Set, decimal Most)
{
    private const decimal MostDollars = 1000;
    private const decimal MostPercent = 100;

    // A job file takes from 1 to 3650 days and up to 20 helpers.
    private const decimal MostDays = 3650;
    private const decimal MostHelpers = 20;

    /// <summary>All, in the order in which a price is made.</summary>
    public static ImmutableArray<RateField> All { get; } =
    [
        new("electrician_wage", "$/h", b => b.ElectricianWage?.ToDollars(), (b, v) => b with { ElectricianWage = Dollars(v) }, MostDollars),
        new("helper_wage", "$/h", b => b.HelperWage?.ToDollars(), (b, v) => b with { HelperWage = Dollars(v) }, MostDollars),
        new("helpers_per_electrician", "", b => b.HelpersPerElectrician, (b, v) => b with { HelpersPerElectrician = v }, MostHelpers),
        new("burden_percent", "%", b => b.BurdenPercent?.ToHundredths(), (b, v) => b with { BurdenPercent = Share(v) }, MostPercent),
        new("productive_percent", "%", b => b.ProductivePercent?.ToHundredths(), (b, v) => b with { ProductivePercent = Share(v) }, MostPercent) { Least = 1 },
        new("material_tax_percent", "%", b => b.MaterialTaxPercent?.ToHundredths(), (b, v) => b with { MaterialTaxPercent = Share(v) }, MostPercent),
        new("permit", "$", b => b.Permit?.ToDollars(), (b, v) => b with { Permit = Dollars(v) }, OwnPrices.HighestDollars),
        new("overhead_percent", "%", b => b.OverheadPercent?.ToHundredths(), (b, v) => b with { OverheadPercent = Share(v) }, MostPercent),
        new("contingency_percent", "%", b => b.ContingencyPercent?.ToHundredths(), (b, v) => b with { ContingencyPercent = Share(v) }, MostPercent),
        new("profit_percent", "%", b => b.ProfitPercent?.ToHundredths(), (b, v) => b with { ProfitPercent = Share(v) }, MostPercent - 1),
        new("round_price_to", "$", b => b.RoundPriceTo?.ToDollars(), (b, v) => b with { RoundPriceTo = Dollars(v) }, MostDollars),
        new("valid_days", "days", b => b.ValidDays, (b, v) => b with { ValidDays = (int?)v }, MostDays) { Least = 1, Whole = true },
    ];

    /// <summary>The lowest that is accepted.</summary>
    public decimal Least { get; init; }

    /// <summary>Whether a whole number is wanted.</summary>
    public bool Whole { get; init; }

    /// <summary>The row that counts where the rate is left open.</summary>
    public RuleRow Row => RuleTable.Load("bid_defaults")[Key];

    /// <summary>The rates with what was typed; empty leaves the rate open.</summary>
    public Parsed<BidSettings> Take(BidSettings rates, string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return Parsed<BidSettings>.Success(Set(rates, null));
        }

        return PriceText.Parse(text, Most) is { Ok: true } read && read.Value.ToDollars() is var value && value >= Least && (!Whole || value == decimal.Truncate(value))
            ? Parsed<BidSettings>.Success(Set(rates, value))
            : Parsed<BidSettings>.Failure($"Found “{PriceText.Short(text)}”; a {(Whole ? "whole number" : "number")} from {American.Number(Least)} to {American.Number(Most)} is accepted, or nothing.");
    }

    private static Money? Dollars(decimal? value) => value is { } dollars ? Money.FromDollars(dollars) : null;

    private static Percent? Share(decimal? value) => value is { } percent ? Percent.FromHundredths(percent) : null;
}
