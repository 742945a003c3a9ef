using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase.Orders;

/// <summary>A line of a purchase order: so many packs of one size.</summary>
/// <param name="Line">Its place, from 1.</param>
/// <param name="Item">The item.</param>
/// <param name="Description">What it is.</param>
/// <param name="Unit">each or foot.</param>
/// <param name="PackSize">Pieces or feet in a pack.</param>
/// <param name="Packs">How many packs.</param>
/// <param name="PackPrice">Price of a pack.</param>
/// <param name="Number">The supplier's own item number; empty where it is not known.</param>
public sealed record OrderLine(int Line, string Item, string Description, string Unit, int PackSize, int Packs, Money PackPrice, string Number)
{
    /// <summary>What some packs of the line cost, in whole cents.</summary>
    /// <param name="packs">How many.</param>
    public Money CostOf(int packs) => (PackPrice * packs).RoundToCents();

    /// <summary>What the line costs as it was ordered.</summary>
    public Money Cost => CostOf(Packs);
}
