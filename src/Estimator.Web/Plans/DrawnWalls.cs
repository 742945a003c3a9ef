using System.Collections.Immutable;

namespace Estimator.Web.Plans;

/// <summary>The walls of a level. Rooms are laid over the blocks, so what stays in sight is the thickness between facing outlines and a belt round the house.</summary>
/// <param name="Blocks">Filled outlines.</param>
/// <param name="Shared">Lines where two outlines touch and no thickness was stated.</param>
/// <param name="SharedThickness">How thick those are drawn, in feet.</param>
public sealed record DrawnWalls(ImmutableArray<ImmutableArray<SheetPoint>> Blocks, ImmutableArray<(SheetPoint From, SheetPoint To)> Shared, double SharedThickness);
