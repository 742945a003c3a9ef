namespace Estimator.Web.Plans;

/// <summary>A place where a run leaves the level.</summary>
/// <param name="At">Where.</param>
/// <param name="Up">Whether it goes up.</param>
/// <param name="Level">Name of the level that it goes to or comes from.</param>
public sealed record DrawnRiser(SheetPoint At, bool Up, string Level);
