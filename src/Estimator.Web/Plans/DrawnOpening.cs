using System.Collections.Immutable;
using Estimator.Engine.House;

namespace Estimator.Web.Plans;

/// <summary>An opening on the sheet.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Gap">The part of the wall that it takes away.</param>
/// <param name="Lines">Grey lines: leaf, panes, threshold.</param>
/// <param name="Swing">Path of a hinged door's swing; empty where none.</param>
/// <param name="Dashed">Whether the lines are dashed: nothing closes it.</param>
public sealed record DrawnOpening(
    string Id, OpeningKind Kind, ImmutableArray<SheetPoint> Gap, ImmutableArray<ImmutableArray<SheetPoint>> Lines, string Swing, bool Dashed);
