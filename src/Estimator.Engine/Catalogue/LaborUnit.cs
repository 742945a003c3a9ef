namespace Estimator.Engine.Catalogue;

/// <summary>Hours for an item in a phase.</summary>
/// <param name="Item">The item.</param>
/// <param name="Phase">The phase.</param>
/// <param name="Hours">Hours for <paramref name="Per"/> units.</param>
/// <param name="Per">How many units the hours are for.</param>
/// <param name="Basis">On what the figure rests.</param>
public sealed record LaborUnit(string Item, WorkPhase Phase, decimal Hours, decimal Per, string Basis);
