using System.Collections.Immutable;
using Estimator.Engine.Explanations;

namespace Estimator.Engine.Takeoff;

/// <summary>A quantity of a catalogue item.</summary>
/// <param name="ItemId">The item.</param>
/// <param name="Category">Its category.</param>
/// <param name="Description">What it is.</param>
/// <param name="Unit">each or foot.</param>
/// <param name="Quantity">How many, or how many feet.</param>
/// <param name="OwnerSupplied">Whether the owner supplies it: labor and no material.</param>
/// <param name="Where">Rooms or circuits that it is for.</param>
public sealed record TakeoffLine(
    string ItemId, string Category, string Description, string Unit, Fact Quantity, bool OwnerSupplied, ImmutableArray<string> Where)
{
    /// <summary>What is bought beyond the quantity, as the job states it for the category; null for none. It takes no hours.</summary>
    public Fact? Spare { get; init; }

    /// <summary>The quantity by room or circuit, in the line's unit; their sum is the quantity.</summary>
    public ImmutableSortedDictionary<string, decimal> ByPlace { get; init; } = ImmutableSortedDictionary<string, decimal>.Empty;
}
