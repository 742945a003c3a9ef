using Estimator.Engine.Purchase;

namespace Estimator.Documents;

/// <summary>Tells prices that are samples from prices that somebody asks.</summary>
internal static class SamplePrices
{
    /// <summary>Whether any price of the purchase is a sample.</summary>
    internal static bool In(PurchasePlan plan) => plan.Lines.Any(l => l.Packs.Any(p => p.Offer.IsSample));
}
