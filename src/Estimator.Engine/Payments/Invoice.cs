using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Payments;

/// <summary>What is asked for at one time.</summary>
/// <param name="Kind">What it asks for.</param>
/// <param name="Lines">All lines of the contract, those that it bills nothing of among them; none on the invoice of a deposit.</param>
/// <param name="Deposit">The deposit that it asks for.</param>
/// <param name="DepositApplied">What of the deposit paid before is taken off.</param>
/// <param name="Retained">What of the work billed here is paid last.</param>
/// <param name="Released">What was retained before and is paid now.</param>
public sealed record Invoice(InvoiceKind Kind, ImmutableArray<InvoiceLine> Lines, Money Deposit, Money DepositApplied, Money Retained, Money Released)
{
    /// <summary>Work billed here.</summary>
    public Money Work => Lines.Aggregate(Money.Zero, (sum, l) => sum + l.Now);

    /// <summary>What is to be paid.</summary>
    public Money Due => Deposit + Work - DepositApplied - Retained + Released;
}
