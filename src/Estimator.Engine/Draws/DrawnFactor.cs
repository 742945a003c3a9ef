namespace Estimator.Engine.Draws;

/// <summary>Something that moves a share of a cost up or down as one.</summary>
/// <param name="Stream">Which draws it has. Two factors with the same stream move together; each keeps its draws whatever else is drawn.</param>
/// <param name="SharePercent">The share of the whole cost that it acts on.</param>
/// <param name="Spread">How far that share may be off.</param>
public sealed record DrawnFactor(int Stream, decimal SharePercent, Triangle Spread);
