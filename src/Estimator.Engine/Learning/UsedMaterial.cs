namespace Estimator.Engine.Learning;

/// <summary>Material that went into a job.</summary>
/// <param name="Item">The item of the catalogue.</param>
/// <param name="Quantity">Pieces, or feet of cable, offcuts in them.</param>
public sealed record UsedMaterial(string Item, decimal Quantity);
