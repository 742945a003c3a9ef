namespace Estimator.Engine.Changes;

/// <summary>How much of an item comes and how much goes; one does not make up for the other.</summary>
/// <param name="ItemId">The item.</param>
/// <param name="Owner">Whether the owner supplies it.</param>
/// <param name="Added">What comes, in the item's unit.</param>
/// <param name="Removed">What goes.</param>
internal readonly record struct ItemChange(string ItemId, bool Owner, decimal Added, decimal Removed);
