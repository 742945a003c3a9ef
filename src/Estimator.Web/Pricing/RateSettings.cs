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

    /// <summary>Who is on the job, how long a week, and what it waits for.</summary>
    public static ImmutableArray<RateSetting> OfTheCrew { get; } =
    [
        Whole("crew.leads", "Leads", "hands", b => b.Crew?.Leads, (b, v) => With(b, c => c with { Leads = v })),
        Whole("crew.electricians", "Electricians", "hands", b => b.Crew?.Electricians, (b, v) => With(b, c => c with { Electricians = v })) with { Empty = "one, none beside a lead." },
        Whole("crew.helpers", "Apprentices and helpers", "hands", b => b.Crew?.Helpers, (b, v) => With(b, c => c with { Helpers = v })) with { Empty = "as many to each electrician as stated above." },
        Dollars("crew.lead_wage", "Lead's wage", "dollars an hour", b => b.Crew?.LeadWage, (b, v) => With(b, c => c with { LeadWage = v }), null) with { Empty = "a tenth above the electrician's." },
        new("crew.helpers_limit", "Apprentices allowed to an electrician", "hands", b => b.Crew?.HelpersLimit, (b, v) => With(b, c => c with { HelpersLimit = v }), null) { Empty = "not judged; states differ." },
        new("crew.overtime_hours_a_week", "Overtime", "hours a week", b => b.Crew?.OvertimeHoursAWeek, (b, v) => With(b, c => c with { OvertimeHoursAWeek = v }), null),
        Whole("crew.overtime_weeks", "Weeks of overtime in a row", "weeks", b => b.Crew?.OvertimeWeeks, (b, v) => With(b, c => c with { OvertimeWeeks = v })) with { Empty = "one." },
        new("inspection_wait_days", "Wait for an inspection", "days", b => b.InspectionWaitDays, (b, v) => b with { InspectionWaitDays = (int?)v }, BidDefaults.InspectionWaitDays, Whole: true),
    ];

    /// <summary>Driving, where it is counted as hours.</summary>
    public static ImmutableArray<RateSetting> OfDriving { get; } =
    [
        new("drive.hours_a_trip", "Driving, both ways", "hours a trip", b => b.Drive?.HoursATrip, (b, v) => b with { Drive = Stated((b.Drive ?? new DriveTime()) with { HoursATrip = v }) }, BidDefaults.DriveHoursATrip),
        Whole("drive.trips", "Trips to the site", "trips", b => b.Drive?.Trips, (b, v) => b with { Drive = Stated((b.Drive ?? new DriveTime()) with { Trips = v }) }) with { Empty = "one for each day of the crew." },
    ];

    /// <summary>What is added to material and hours, and the terms.</summary>
    public static ImmutableArray<RateSetting> OfThePrice { get; } =
    [
        Share("material_tax_percent", "Sales tax", "%", b => b.MaterialTaxPercent, (b, v) => b with { MaterialTaxPercent = v }, BidDefaults.MaterialTaxPercent),
        Dollars("permit", "Permit fee", "dollars", b => b.Permit, (b, v) => b with { Permit = v }, BidDefaults.Permit),
        Dollars("fees", "Other fees", "dollars", b => b.Fees, (b, v) => b with { Fees = v }, null),
        Dollars("subcontract", "Work by others", "dollars", b => b.Subcontract, (b, v) => b with { Subcontract = v }, null),
        Dollars("equipment_hire", "Tools and machines hired", "dollars", b => b.EquipmentHire, (b, v) => b with { EquipmentHire = v }, null),
        Share("overhead_percent", "Overhead", "% of direct cost", b => b.OverheadPercent, (b, v) => b with { OverheadPercent = v }, BidDefaults.OverheadPercent),
        Share("contingency_percent", "Contingency", "% of direct cost", b => b.ContingencyPercent, (b, v) => b with { ContingencyPercent = v }, BidDefaults.ContingencyPercent),
        Share("profit_percent", "Profit", "%", b => b.ProfitPercent, (b, v) => b with { ProfitPercent = v }, BidDefaults.ProfitPercent),
        Dollars("round_price_to", "Price rounded up to", "dollars", b => b.RoundPriceTo, (b, v) => b with { RoundPriceTo = v }, BidDefaults.RoundPriceTo),
        new("valid_days", "Bid stands", "days", b => b.ValidDays, (b, v) => b with { ValidDays = v is { } days ? decimal.ToInt32(days) : null }, BidDefaults.ValidDays, Whole: true),
    ];

    // A section in which nothing is stated goes, so that the job reads as if it had never been opened.
    private static BidSettings With(BidSettings bid, Func<CrewMix, CrewMix> change) =>
        change(bid.Crew ?? new CrewMix()) is var crew && crew == new CrewMix() ? bid with { Crew = null } : bid with { Crew = crew };

    private static DriveTime? Stated(DriveTime drive) => drive == new DriveTime() ? null : drive;

    private static RateSetting Whole(string field, string title, string unit, Func<BidSettings, int?> read, Func<BidSettings, int?, BidSettings> write) =>
        new(field, title, unit, b => read(b), (b, v) => write(b, (int?)v), null, Whole: true);

    private static RateSetting Dollars(string field, string title, string unit, Func<BidSettings, Money?> read, Func<BidSettings, Money?, BidSettings> write, RuleRow? row) =>
        new(field, title, unit, b => read(b)?.ToDollars(), (b, v) => write(b, v is { } dollars ? Money.FromDollars(dollars) : null), row);

    private static RateSetting Share(string field, string title, string unit, Func<BidSettings, Percent?> read, Func<BidSettings, Percent?, BidSettings> write, RuleRow row) =>
        new(field, title, unit, b => read(b)?.ToHundredths(), (b, v) => write(b, v is { } hundredths ? Percent.FromHundredths(hundredths) : null), row);
}
