namespace Estimator.Engine.Upgrades;

/// <summary>A part that an upgrade adds; negative where it takes some away.</summary>
/// <param name="ItemId">The catalogue item.</param>
/// <param name="Description">What it is.</param>
/// <param name="Unit">each or foot.</param>
/// <param name="Quantity">How many, or how many feet.</param>
public sealed record AddedPart(string ItemId, string Description, string Unit, decimal Quantity);
