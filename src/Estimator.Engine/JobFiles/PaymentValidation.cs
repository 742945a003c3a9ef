using Estimator.Engine.House;

namespace Estimator.Engine.JobFiles;

/// <summary>Refuses terms of payment that nobody can keep.</summary>
internal static class PaymentValidation
{
    private const int MostDays = 3650;
    private const int All = 100;

    internal static void Check(PaymentTerms? payment, ProblemList problems)
    {
        if (payment is null)
        {
            return;
        }

        problems.Range("$.payment.deposit_percent", payment.DepositPercent?.ToHundredths(), 0, All, "percent");
        problems.Range("$.payment.deposit_cap_percent", payment.DepositCapPercent?.ToHundredths(), 0, All, "percent");
        problems.Range("$.payment.retainage_percent", payment.RetainagePercent?.ToHundredths(), 0, All, "percent");
        problems.Range("$.payment.days_to_pay", payment.DaysToPay, 0, MostDays, "days");
        problems.Range("$.payment.late_charge_percent", payment.LateChargePercent?.ToHundredths(), 0, All, "percent");
        problems.Range("$.payment.milestones", payment.Milestones.Length, 0, All, "milestones");
        for (var m = 0; m < payment.Milestones.Length; m++)
        {
            problems.Range($"$.payment.milestones[{m}].share_percent", payment.Milestones[m].SharePercent.ToHundredths(), 0, All, "percent");
            if (payment.Milestones[..m].Any(other => other.Id == payment.Milestones[m].Id))
            {
                problems.Add($"$.payment.milestones[{m}].id", payment.Milestones[m].Id, "an id that no other milestone has");
            }
        }

        if (!payment.Milestones.IsEmpty)
        {
            problems.Range("$.payment.milestones", payment.Milestones.Sum(m => m.SharePercent.ToHundredths()), All, All, "percent in all");
        }
    }
}
