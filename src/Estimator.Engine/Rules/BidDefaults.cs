namespace Estimator.Engine.Rules;

/// <summary>From cost to price, where the job says nothing.</summary>
public static class BidDefaults
{
    private static RuleTable Table => RuleTables.Of("bid_defaults");

    /// <summary>Electrician's wage.</summary>
    public static RuleRow ElectricianWage => Table["electrician_wage"];

    /// <summary>Helper's wage.</summary>
    public static RuleRow HelperWage => Table["helper_wage"];

    /// <summary>Helpers for each electrician.</summary>
    public static RuleRow HelpersPerElectrician => Table["helpers_per_electrician"];

    /// <summary>What a lead earns above the electrician's wage, percent.</summary>
    public static RuleRow LeadWagePercent => Table["lead_wage_percent"];

    /// <summary>Premium on wages for overtime, percent.</summary>
    public static RuleRow OvertimePremiumPercent => Table["overtime_premium_percent"];

    /// <summary>Working days of waiting for an inspection.</summary>
    public static RuleRow InspectionWaitDays => Table["inspection_wait_days"];

    /// <summary>Burden on straight wages, percent.</summary>
    public static RuleRow BurdenPercent => Table["burden_percent"];

    /// <summary>Productive share of paid hours, percent.</summary>
    public static RuleRow ProductivePercent => Table["productive_percent"];

    /// <summary>Hours of driving of a trip, each hand.</summary>
    public static RuleRow DriveHoursATrip => Table["drive_hours_a_trip"];

    /// <summary>Sales tax on material, percent.</summary>
    public static RuleRow MaterialTaxPercent => Table["material_tax_percent"];

    /// <summary>Permit fee.</summary>
    public static RuleRow Permit => Table["permit"];

    /// <summary>Overhead on direct cost, percent.</summary>
    public static RuleRow OverheadPercent => Table["overhead_percent"];

    /// <summary>Contingency on direct cost, percent.</summary>
    public static RuleRow ContingencyPercent => Table["contingency_percent"];

    /// <summary>Profit, percent.</summary>
    public static RuleRow ProfitPercent => Table["profit_percent"];

    /// <summary>What the price is rounded up to.</summary>
    public static RuleRow RoundPriceTo => Table["round_price_to"];

    /// <summary>Paid hours of a week without overtime.</summary>
    public static RuleRow PaidHoursAWeek => Table["paid_hours_a_week"];

    /// <summary>Working days of a week.</summary>
    public static RuleRow WorkingDaysAWeek => Table["working_days_a_week"];

    /// <summary>Days that a bid stands.</summary>
    public static RuleRow ValidDays => Table["valid_days"];
}
