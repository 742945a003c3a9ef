namespace Estimator.Engine.Learning;

/// <summary>A factor that the firm accepted.</summary>
/// <param name="Kind">Hours or material.</param>
/// <param name="Key">The phase or a class in it (<see cref="UnitKey"/>), or the category of the items.</param>
/// <param name="Factor">By what the table's figure is multiplied.</param>
/// <param name="Jobs">From how many jobs.</param>
public sealed record OwnUnit(LearnedKind Kind, string Key, decimal Factor, int Jobs);
