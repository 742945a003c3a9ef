using System.Globalization;
using Estimator.Engine.Measures;
using Estimator.Engine.Payments;

namespace Estimator.Documents.Contracts;

/// <summary>What an invoice says.</summary>
public static class InvoiceWords
{
    /// <summary>That laws rule what an invoice may ask for.</summary>
    public const string Law = "State law may cap deposits, retainage and late charges, set notices and deadlines for lien rights, and ask for a written contract: check yours. This is no legal advice.";

    /// <summary>What it asks for.</summary>
    /// <param name="kind">The kind.</param>
    public static string Of(InvoiceKind kind) => kind switch
    {
        InvoiceKind.Deposit => "Deposit",
        InvoiceKind.Progress => "Progress",
        _ => "Final",
    };

    /// <summary>From the work to what is due, line by line; what is zero is left out.</summary>
    /// <param name="invoice">The invoice.</param>
    public static IEnumerable<(string What, Money Amount)> Sums(Invoice invoice)
    {
        ArgumentNullException.ThrowIfNull(invoice);
        (string, Money Amount)[] sums =
        [
            ("Deposit before the work starts", invoice.Deposit), ("Work billed here", invoice.Work), ("Deposit taken off", Money.Zero - invoice.DepositApplied), ("Retained until the end", Money.Zero - invoice.Retained), ("Retained before, paid now", invoice.Released),
        ];
        return sums.Where(s => s.Amount != Money.Zero);
    }

    /// <summary>Terms and schedule of values of a bid, as it goes out.</summary>
    /// <param name="plan">The payment plan.</param>
    public static string Of(PaymentPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return $"{Terms(plan.Terms)} By progress: {string.Join("; ", plan.Frozen.Select(l => $"{l.Title} {l.Value}"))}.";
    }

    /// <summary>The terms as a sentence.</summary>
    /// <param name="terms">The terms.</param>
    public static string Terms(ContractTerms terms)
    {
        ArgumentNullException.ThrowIfNull(terms);
        return string.Concat(
            terms.Deposit > Money.Zero ? $"{terms.Deposit} before the work starts, taken off as the work is billed. " : "",
            string.Create(CultureInfo.InvariantCulture, $"The rest by progress, due {terms.DaysToPay} days after each invoice."),
            terms.RetainagePercent > 0 ? string.Create(CultureInfo.InvariantCulture, $" {terms.RetainagePercent:0.##}% of the work is retained and paid with the last invoice.") : "",
            terms.LateChargePercent > 0 ? string.Create(CultureInfo.InvariantCulture, $" {terms.LateChargePercent:0.##}% a month is charged on what is paid late, or what the law allows if that is less.") : "");
    }
}
