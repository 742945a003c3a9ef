using System.Collections.Immutable;
using System.Globalization;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Web.Figures;
using Estimator.Web.Pricing;

namespace Estimator.Web.Contracts;

/// <summary>A term of payment that the user may state for the job; left empty it follows the payment table.</summary>
/// <param name="Field">Its field in the job file.</param>
/// <param name="Title">What it is.</param>
/// <param name="Unit">Unit behind the number.</param>
/// <param name="Read">Reads it.</param>
/// <param name="Write">Writes it; null takes it away.</param>
/// <param name="Help">What holds where the field is empty.</param>
public sealed record TermSetting(string Field, string Title, string Unit, Func<PaymentTerms, decimal?> Read, Func<PaymentTerms, decimal?, PaymentTerms> Write, string Help)
{
    private const string CapHelp = "Left empty: no cap. State law sets one in many states; California: $1,000 or 10%, whichever is less.";

    /// <summary>All of them.</summary>
    public static ImmutableArray<TermSetting> All { get; } =
    [
        Share("deposit_percent", "Deposit, of the price", "%", t => t.DepositPercent, (t, v) => t with { DepositPercent = v }, Of(PaymentDefaults.DepositPercent)),
        Share("deposit_cap_percent", "Deposit at most, of the price", "%", t => t.DepositCapPercent, (t, v) => t with { DepositCapPercent = v }, CapHelp),
        new("deposit_cap", "Deposit at most", "$", t => t.DepositCap?.ToDollars(), (t, v) => t with { DepositCap = v is { } d ? Money.FromDollars(d) : null }, CapHelp),
        Share("retainage_percent", "Retainage, of the work done", "%", t => t.RetainagePercent, (t, v) => t with { RetainagePercent = v }, $"{Of(PaymentDefaults.RetainagePercent)} Federal contracts hold at most {American.Number(PaymentDefaults.RetainageMostPercent.Number())}%."),
        new("days_to_pay", "Due after an invoice", "days", t => t.DaysToPay, (t, v) => t with { DaysToPay = v is { } d ? decimal.ToInt32(d) : null }, Of(PaymentDefaults.DaysToPay)) { Whole = true },
        Share("late_charge_percent", "Late charge, a month", "%", t => t.LateChargePercent, (t, v) => t with { LateChargePercent = v }, Of(PaymentDefaults.LateChargePercent)),
    ];

    /// <summary>Whether only whole numbers make sense.</summary>
    public bool Whole { get; init; }

    /// <summary>The stated number as it stands in its field.</summary>
    public string Text(Job job) => Read(job.Payment ?? new PaymentTerms())?.ToString("0.####", CultureInfo.InvariantCulture) ?? "";

    /// <summary>The change that a typed text makes, or what is wrong with it.</summary>
    public Parsed<Func<Job, Job>> Change(Job job, string text) => StatedNumber.Change(job, text, $"$.payment.{Field}", Whole ? Unit : null, (j, v) => j with { Payment = Write(j.Payment ?? new PaymentTerms(), v) });

    private static string Of(RuleRow row) => $"Left empty: {American.Number(row.Number(), 2)} ({row.Basis}).";

    private static TermSetting Share(string field, string title, string unit, Func<PaymentTerms, Percent?> read, Func<PaymentTerms, Percent?, PaymentTerms> write, string help) =>
        new(field, title, unit, t => read(t)?.ToHundredths(), (t, v) => write(t, v is { } h ? Percent.FromHundredths(h) : null), help);
}
