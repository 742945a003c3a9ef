using System.Collections.Immutable;
using Estimator.Documents.Workbooks;
using Estimator.Engine.Explanations;

namespace Estimator.Documents.Pricing;

/// <summary>A rate from which the price follows, in a cell with a name.</summary>
/// <param name="Field">Its field in the job, and the key of its row in the bid table.</param>
/// <param name="Name">Name of the cell.</param>
/// <param name="Unit">Unit in words.</param>
/// <param name="Format">Format of the number.</param>
internal sealed record BidRate(string Field, string Name, string Unit, string Format)
{
    /// <summary>The rates of an hour, in order.</summary>
    internal static ImmutableArray<BidRate> OfAnHour { get; } =
    [
        new("electrician_wage", "ElectricianWage", "$ an hour", SheetStyles.Dollars),
        new("helper_wage", "HelperWage", "$ an hour", SheetStyles.Dollars),
        new("helpers_per_electrician", "HelpersPerElectrician", "each", SheetStyles.Plain),
        new("crew.leads", "CrewLeads", "each", SheetStyles.Plain),
        new("crew.electricians", "CrewElectricians", "each", SheetStyles.Plain),
        new("crew.helpers", "CrewHelpers", "each", SheetStyles.Plain),
        new("crew.lead_wage", "LeadWage", "$ an hour", SheetStyles.Dollars),
        new("lead_wage_percent", "LeadAbove", "% above the electrician", SheetStyles.Plain),
        new("crew.overtime_hours_a_week", "OvertimeHours", "hours a week", SheetStyles.Plain),
        new("overtime_premium_percent", "OvertimePremium", "% of the wage", SheetStyles.Plain),
        new("burden_percent", "Burden", "% of wages", SheetStyles.Plain),
        new("productive_percent", "ProductiveShare", "% of paid hours", SheetStyles.Plain),
        new("drive.hours_a_trip", "DriveHours", "hours a trip, each hand", SheetStyles.Plain),
        new("drive_hours_a_trip", "DriveHours", "hours a trip, each hand", SheetStyles.Plain),
        new("drive.trips", "Trips", "each", SheetStyles.Plain),
    ];

    /// <summary>The rates of cost and price, in order.</summary>
    internal static ImmutableArray<BidRate> OfThePrice { get; } =
    [
        new("material_tax_percent", "MaterialTax", "%", SheetStyles.Plain),
        new("permit", "PermitFee", "$", SheetStyles.Dollars),
        new("fees", "OtherFees", "$", SheetStyles.Dollars),
        new("subcontract", "WorkByOthers", "$", SheetStyles.Dollars),
        new("equipment_hire", "ToolHire", "$", SheetStyles.Dollars),
        new("overhead_percent", "Overhead", "% of direct cost", SheetStyles.Plain),
        new("contingency_percent", "Contingency", "% of direct cost", SheetStyles.Plain),
        new("profit_percent", "Profit", "%", SheetStyles.Plain),
        new("round_price_to", "RoundPriceTo", "$; 0 leaves the cents", SheetStyles.Dollars),
    ];

    /// <summary>The leaf that holds the rate; null where the bid does not read it.</summary>
    internal ExplanationNode? Leaf(ExplanationPage bid) => Enumerable.Range(0, bid.Count).Select(i => bid[i])
        .FirstOrDefault(n => n.Rule == $"$.bid.{Field}" || n.Rule == $"bid_defaults:{Field}");
}
