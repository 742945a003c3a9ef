using Estimator.Engine.Catalogue;

namespace Estimator.Engine.Purchase.Suppliers;

/// <summary>In which phase of the work an item is needed first.</summary>
/// <remarks>The first phase for which the labor table has hours of the item. What has none comes with what it is put on: plates and devices at trim-out, all else at rough-in. Common practice, no source.</remarks>
public static class BuyingPhase
{
    /// <summary>The phase of an item.</summary>
    /// <param name="catalogue">The catalogue with its labor table.</param>
    /// <param name="item">The item.</param>
    public static WorkPhase Of(PartsCatalogue catalogue, string item)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        return catalogue.LaborFor(item).Select(l => l.Phase).DefaultIfEmpty(catalogue.Find(item)?.Category is "plate" or "device" or "luminaire" ? WorkPhase.TrimOut : WorkPhase.RoughIn).Min();
    }
}
