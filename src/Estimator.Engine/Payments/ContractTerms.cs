using Estimator.Engine.Measures;

namespace Estimator.Engine.Payments;

/// <summary>Terms of payment as they were agreed.</summary>
/// <param name="Deposit">What is paid before the work starts.</param>
/// <param name="RetainagePercent">Share of the work done that is paid with the last invoice.</param>
/// <param name="DaysToPay">Days from an invoice to the day on which it is due.</param>
/// <param name="LateChargePercent">Charge for each month on what is paid late.</param>
public sealed record ContractTerms(Money Deposit, decimal RetainagePercent, int DaysToPay, decimal LateChargePercent);
