namespace Estimator.Engine.Rules;

/// <summary>When and how a price is paid, where the job says nothing.</summary>
public static class PaymentDefaults
{
    private static RuleTable Table => RuleTables.Of("payment_defaults");

    /// <summary>Deposit before the work starts, percent of the price.</summary>
    public static RuleRow DepositPercent => Table["deposit_percent"];

    /// <summary>Share of the work done that is paid last, percent.</summary>
    public static RuleRow RetainagePercent => Table["retainage_percent"];

    /// <summary>The most that a federal contract retains, percent: what lies above it is worth a second look.</summary>
    public static RuleRow RetainageMostPercent => Table["retainage_most_percent"];

    /// <summary>Days from an invoice to the day on which it is due.</summary>
    public static RuleRow DaysToPay => Table["days_to_pay"];

    /// <summary>Charge for each month on what is paid late, percent.</summary>
    public static RuleRow LateChargePercent => Table["late_charge_percent"];
}
