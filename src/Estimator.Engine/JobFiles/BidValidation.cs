using Estimator.Engine.House;

namespace Estimator.Engine.JobFiles;

/// <summary>Refuses bid settings from which no price follows, or none that anyone would mean.</summary>
internal static class BidValidation
{
    private const int MostPercent = 1000;
    private const int MostHelpers = 20;
    private const int MostDays = 3650;

    internal static void Check(BidSettings bid, ProblemList problems)
    {
        problems.Range("$.bid.helpers_per_electrician", bid.HelpersPerElectrician, 0, MostHelpers, "helpers");
        problems.Range("$.bid.valid_days", bid.ValidDays, 1, MostDays, "days");
        problems.Range("$.bid.productive_percent", bid.ProductivePercent?.ToHundredths(), 1, 100, "percent");
        problems.Range("$.bid.material_tax_percent", bid.MaterialTaxPercent?.ToHundredths(), 0, 100, "percent");
        problems.Range("$.bid.burden_percent", bid.BurdenPercent?.ToHundredths(), 0, MostPercent, "percent");
        problems.Range("$.bid.overhead_percent", bid.OverheadPercent?.ToHundredths(), 0, MostPercent, "percent");
        problems.Range("$.bid.contingency_percent", bid.ContingencyPercent?.ToHundredths(), 0, MostPercent, "percent");
        problems.Range("$.bid.profit_percent", bid.ProfitPercent?.ToHundredths(), 0, bid.ProfitBasis is ProfitBasis.Margin ? 99 : MostPercent, "percent");
    }
}
