using Estimator.Engine.Explanations;

namespace Estimator.Engine.Payments;

/// <summary>The sums of an invoice, each with what it follows from.</summary>
/// <param name="Work">Work billed here.</param>
/// <param name="Deposit">The deposit that it asks for.</param>
/// <param name="DepositApplied">What of the deposit is taken off.</param>
/// <param name="Retained">What is paid last.</param>
/// <param name="Released">What was retained before and is paid now.</param>
/// <param name="Due">What is to be paid.</param>
/// <param name="Page">Page of the explanation book.</param>
public sealed record ExplainedInvoice(Fact Work, Fact Deposit, Fact DepositApplied, Fact Retained, Fact Released, Fact Due, ExplanationPage Page);
