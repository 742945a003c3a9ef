namespace Estimator.Engine.House;

/// <summary>A plumbing or kitchen fixture that rules measure from.</summary>
/// <param name="Kind">What.</param>
/// <param name="At">Its middle on the grid; null where only its presence is known.</param>
public sealed record Fixture(FixtureKind Kind, GridPoint? At = null);
