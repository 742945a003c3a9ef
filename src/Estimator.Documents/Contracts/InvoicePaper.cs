using Estimator.Engine.Measures;
using Estimator.Engine.Payments;

namespace Estimator.Documents.Contracts;

/// <summary>An invoice as the customer reads it.</summary>
/// <param name="Job">Name of the job.</param>
/// <param name="Number">Number of the invoice.</param>
/// <param name="Invoice">What it asks for.</param>
/// <param name="Terms">What was agreed on payment.</param>
/// <param name="On">Its day.</param>
/// <param name="Contract">What the contract is worth, changes included.</param>
/// <param name="AskedBefore">What earlier invoices asked for.</param>
public sealed record InvoicePaper(string Job, int Number, Invoice Invoice, ContractTerms Terms, DateOnly On, Money Contract, Money AskedBefore)
{
    /// <summary>The day on which it is due.</summary>
    public DateOnly DueOn => On.AddDays(Terms.DaysToPay);

    /// <summary>What no invoice asked for yet.</summary>
    public Money Open => Contract - AskedBefore - Invoice.Due;
}
