using System.Globalization;
using Estimator.Documents.Tables;
using Estimator.Engine.Measures;

namespace Estimator.Documents.Contracts;

/// <summary>An invoice as CSV: a row for each line of the schedule of values, then one for each sum, so that the amounts of the last column lead to what is due.</summary>
public static class InvoiceTable
{
    /// <summary>The table.</summary>
    /// <param name="invoice">The invoice.</param>
    public static string Write(InvoicePaper invoice)
    {
        ArgumentNullException.ThrowIfNull(invoice);
        var (number, day) = (Csv.Number(invoice.Number), invoice.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        CsvCell[] Sum(string what, Money amount) => [number, day, "sum", what, "", "", Csv.Number(amount.ToDollars()), ""];
        return Csv.Write(
            ["invoice", "date", "kind", "what", "value_usd", "before_usd", "now_usd", "left_usd"],
            [
                .. invoice.Invoice.Lines.Select(l => (CsvCell[])[number, day, "line", l.Title, Csv.Number(l.Value.ToDollars()), Csv.Number(l.Before.ToDollars()), Csv.Number(l.Now.ToDollars()), Csv.Number(l.Left.ToDollars())]),
                Sum("deposit", invoice.Invoice.Deposit), Sum("work", invoice.Invoice.Work), Sum("deposit_taken_off", invoice.Invoice.DepositApplied), Sum("retained", invoice.Invoice.Retained), Sum("retained_paid", invoice.Invoice.Released),
                [number, invoice.DueOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), "due", "due", "", "", Csv.Number(invoice.Invoice.Due.ToDollars()), ""],
            ]);
    }
}
