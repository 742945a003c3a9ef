using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase;

/// <summary>What is bought of an item.</summary>
/// <param name="ItemId">The item.</param>
/// <param name="Description">What it is.</param>
/// <param name="Unit">each or foot.</param>
/// <param name="Needed">How many, or how many feet, the jobs need.</param>
/// <param name="Packs">The packs or coils.</param>
/// <param name="Left">What is left over: pieces, or feet.</param>
/// <param name="Cost">What the packs cost; null where nobody offers the item.</param>
public sealed record PurchaseLine(
    string ItemId, string Description, string Unit, Fact Needed, ImmutableArray<PackCount> Packs, decimal Left, Explained<Money>? Cost)
{
    private const string Feet = "foot";

    /// <summary>What is taken from the shelf, in the item's unit.</summary>
    public decimal FromStock { get; init; }

    /// <summary>Whether some of what is left over of these packs can go back: whole unopened packs that the supplier takes back. Cut cable never does.</summary>
    public bool GoesBack(PackCount pack) => Unit != Feet && pack.Offer.Returnable && Left >= pack.Offer.PackSize;
}
