using Estimator.Engine.House;

namespace Estimator.Engine.JobFiles;

/// <summary>Refuses bid settings from which no price follows, or none that anyone would mean.</summary>
internal static class BidValidation
{
    private const int MostPercent = 1000;
    private const int MostHelpers = 20;
    private const int MostDays = 3650;
    private const int MostHands = 50;
    private const int HoursOfAWeek = 168;
    private const int HoursOfADay = 24;

    internal static void Check(BidSettings bid, ProblemList problems)
    {
        problems.Range("$.bid.helpers_per_electrician", bid.HelpersPerElectrician, 0, MostHelpers, "helpers");
        problems.Range("$.bid.valid_days", bid.ValidDays, 1, MostDays, "days");
        foreach (var (allowance, i) in bid.Allowances.Select((a, i) => (a, i)))
        {
            problems.Range($"$.bid.allowances[{i}].amount", allowance.Amount.ToDollars(), 0, JobLimits.Number, "dollars");
        }

        problems.Range("$.bid.productive_percent", bid.ProductivePercent?.ToHundredths(), 1, 100, "percent");
        problems.Range("$.bid.material_tax_percent", bid.MaterialTaxPercent?.ToHundredths(), 0, 100, "percent");
        problems.Range("$.bid.inspection_wait_days", bid.InspectionWaitDays, 0, MostDays, "days");
        Crew(bid, problems);
        problems.Range("$.bid.drive.hours_a_trip", bid.Drive?.HoursATrip, 0, HoursOfADay, "hours");
        problems.Range("$.bid.drive.trips", bid.Drive?.Trips, 0, MostDays, "trips");
        problems.Range("$.bid.burden_percent", bid.BurdenPercent?.ToHundredths(), 0, MostPercent, "percent");
        problems.Range("$.bid.overhead_percent", bid.OverheadPercent?.ToHundredths(), 0, MostPercent, "percent");
        problems.Range("$.bid.contingency_percent", bid.ContingencyPercent?.ToHundredths(), 0, MostPercent, "percent");
        problems.Range("$.bid.profit_percent", bid.ProfitPercent?.ToHundredths(), 0, bid.ProfitBasis is ProfitBasis.Margin ? 99 : MostPercent, "percent");
    }

    private static void Crew(BidSettings bid, ProblemList problems)
    {
        if (bid.Crew is not { } crew)
        {
            return;
        }

        problems.Range("$.bid.crew.leads", crew.Leads, 0, MostHands, "leads");
        problems.Range("$.bid.crew.electricians", crew.Electricians, 0, MostHands, "electricians");
        problems.Range("$.bid.crew.helpers", crew.Helpers, 0, MostHands, "helpers");
        problems.Range("$.bid.crew.helpers_limit", crew.HelpersLimit, 0, MostHelpers, "helpers");
        problems.Range("$.bid.crew.overtime_hours_a_week", crew.OvertimeHoursAWeek, 0, HoursOfAWeek - Rules.BidDefaults.PaidHoursAWeek.Number(), "hours");
        problems.Range("$.bid.crew.overtime_weeks", crew.OvertimeWeeks, 1, MostDays, "weeks");
        if (crew.Electricians is 0 && crew.Leads is null or 0)
        {
            problems.Add("$.bid.crew.electricians", "neither a lead nor an electrician", "one of them at least");
        }
    }
}
