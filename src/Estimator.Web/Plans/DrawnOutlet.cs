using Estimator.Engine.Explanations;

namespace Estimator.Web.Plans;

/// <summary>A device or the outlet of a piece of equipment on the sheet.</summary>
public sealed record DrawnOutlet
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Index of the device in the layout; -1 for equipment.</summary>
    public required int Device { get; init; }

    /// <summary>Id of the shape on the symbol sheet; empty for the sign of equipment.</summary>
    public required string Shape { get; init; }

    /// <summary>Letters inside the shape.</summary>
    public required string Inside { get; init; }

    /// <summary>Letters to the lower right.</summary>
    public required string Below { get; init; }

    /// <summary>Its name in a sentence.</summary>
    public required string Name { get; init; }

    /// <summary>The name of its kind, as the legend says it.</summary>
    public required string Kind { get; init; }

    /// <summary>Middle of the sign.</summary>
    public required SheetPoint At { get; init; }

    /// <summary>The box's own place, on the wall or ceiling.</summary>
    public required SheetPoint Spot { get; init; }

    /// <summary>Turn of the sign, in degrees clockwise, so that its foot meets the wall.</summary>
    public required double Turn { get; init; }

    /// <summary>Index of its circuit; -1 where it is on none.</summary>
    public required int Circuit { get; init; }

    /// <summary>What people call its room.</summary>
    public required string Room { get; init; }

    /// <summary>Height of the box above the floor.</summary>
    public required Fact Height { get; init; }

    /// <summary>Whether its place was found by the program.</summary>
    public required bool Assumed { get; init; }
}
