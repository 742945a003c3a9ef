using Estimator.Engine.Measures;

namespace Estimator.Engine.Payments;

/// <summary>A line of the schedule of values on an invoice.</summary>
/// <param name="Id">The line of the contract.</param>
/// <param name="Title">What it is.</param>
/// <param name="Value">What it is worth.</param>
/// <param name="Before">What earlier invoices billed of it.</param>
/// <param name="Now">What this one bills of it.</param>
public sealed record InvoiceLine(string Id, string Title, Money Value, Money Before, Money Now)
{
    private const int All = 100;

    /// <summary>Billed with this invoice and before.</summary>
    public Money Done => Before + Now;

    /// <summary>What is left to bill.</summary>
    public Money Left => Value - Done;

    /// <summary>Share of the line that is billed, percent.</summary>
    public decimal DonePercent => Value == Money.Zero ? All : Done.ToDollars() * All / Value.ToDollars();
}
