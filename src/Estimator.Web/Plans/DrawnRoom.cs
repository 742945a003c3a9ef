using System.Collections.Immutable;

namespace Estimator.Web.Plans;

/// <summary>A room on the sheet.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Size">Its size in words; for a room of many corners the greatest width and depth.</param>
/// <param name="Outline">Its corners, measured to the inside of its walls.</param>
/// <param name="Holes">Shafts inside it.</param>
/// <param name="Label">Where its name stands.</param>
/// <param name="Outdoors">Whether it has no walls.</param>
/// <param name="Arranged">Whether the program arranged it because only sizes were given.</param>
public sealed record DrawnRoom(
    string Id, string Name, string Size, ImmutableArray<SheetPoint> Outline, ImmutableArray<ImmutableArray<SheetPoint>> Holes, SheetPoint Label, bool Outdoors, bool Arranged);
