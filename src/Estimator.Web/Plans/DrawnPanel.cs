using System.Collections.Immutable;

namespace Estimator.Web.Plans;

/// <summary>A panel on the sheet.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Label">Rating and spaces.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Cabinet">Its outline in the wall line.</param>
/// <param name="Spot">Its place on the wall.</param>
/// <param name="LabelAt">Middle of the label, inside the room.</param>
/// <param name="LabelWidth">Width that the label takes.</param>
public sealed record DrawnPanel(string Id, string Label, string Name, ImmutableArray<SheetPoint> Cabinet, SheetPoint Spot, SheetPoint LabelAt, double LabelWidth);
