using Estimator.Engine.Purchase;

namespace Estimator.Web.Purchase;

/// <summary>Tells invented prices from prices that somebody asks.</summary>
public static class SamplePrice
{
    /// <summary>Whether any price of the plan is a sample.</summary>
    public static bool In(PurchasePlan plan) => plan.Lines.Any(In);

    /// <summary>Whether the line is bought at a sample price.</summary>
    public static bool In(PurchaseLine line) => line.Packs.Any(p => p.Offer.IsSample);
}
