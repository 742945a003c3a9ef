using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Web.Pricing;

/// <summary>The rates of a bid, in the order in which cost becomes price.</summary>
public static class RateSettings
{
    /// <summary>What an hour of the crew costs.</summary>
    public static ImmutableArray<RateSetting> OfAnHour { get; } =
    [
        Dollars("electrician_wage", "Electrician's wage", "dollars an hour", b => b.ElectricianWage, (b, v) => b with { ElectricianWage = v }, BidDefaults.ElectricianWage),
        Dollars("helper_wage", "Helper's wage", "dollars an hour", b => b.HelperWage, (b, v) => b with { HelperWage = v }, BidDefaults.HelperWage),
        new("helpers_per_electrician", "Helpers for each electrician", "helpers", b => b.HelpersPerElectrician, (b, v) => b with { HelpersPerElectrician = v }, BidDefaults.HelpersPerElectrician),
        Share("burden_percent", "Burden", "% of wages", b => b.BurdenPercent, (b, v) => b with { BurdenPercent = v }, BidDefaults.BurdenPercent),
        Share("productive_percent", "Productive share", "% of paid hours", b => b.ProductivePercent, (b, v) => b with { ProductivePercent = v }, BidDefaults.ProductivePercent),
    ];

    /// <summary>What is added to material and hours, and the terms.</summary>
    public static ImmutableArray<RateSetting> OfThePrice { get; } =
    [
        Share("material_tax_percent", "Sales tax", "% of material", b => b.MaterialTaxPercent, (b, v) => b with { MaterialTaxPercent = v }, BidDefaults.MaterialTaxPercent),
        Dollars("permit", "Permit fee", "dollars", b => b.Permit, (b, v) => b with { Permit = v }, BidDefaults.Permit),
        Dollars("subcontract", "Work by others", "dollars", b => b.Subcontract, (b, v) => b with { Subcontract = v }, null),
        Dollars("equipment_hire", "Tools and machines hired", "dollars", b => b.EquipmentHire, (b, v) => b with { EquipmentHire = v }, null),
        Share("overhead_percent", "Overhead", "% of direct cost", b => b.OverheadPercent, (b, v) => b with { OverheadPercent = v }, BidDefaults.OverheadPercent),
        Share("contingency_percent", "Contingency", "% of direct cost", b => b.ContingencyPercent, (b, v) => b with { ContingencyPercent = v }, BidDefaults.ContingencyPercent),
        Share("profit_percent", "Profit", "%", b => b.ProfitPercent, (b, v) => b with { ProfitPercent = v }, BidDefaults.ProfitPercent),
        Dollars("round_price_to", "Price rounded up to", "dollars", b => b.RoundPriceTo, (b, v) => b with { RoundPriceTo = v }, BidDefaults.RoundPriceTo),
        new("valid_days", "Bid stands", "days", b => b.ValidDays, (b, v) => b with { ValidDays = v is { } days ? decimal.ToInt32(days) : null }, BidDefaults.ValidDays, Whole: true),
    ];

    private static RateSetting Dollars(string field, string title, string unit, Func<BidSettings, Money?> read, Func<BidSettings, Money?, BidSettings> write, RuleRow? row) =>
        new(field, title, unit, b => read(b)?.ToDollars(), (b, v) => write(b, v is { } dollars ? Money.FromDollars(dollars) : null), row);

    private static RateSetting Share(string field, string title, string unit, Func<BidSettings, Percent?> read, Func<BidSettings, Percent?, BidSettings> write, RuleRow row) =>
        new(field, title, unit, b => read(b)?.ToHundredths(), (b, v) => write(b, v is { } hundredths ? Percent.FromHundredths(hundredths) : null), row);
}
