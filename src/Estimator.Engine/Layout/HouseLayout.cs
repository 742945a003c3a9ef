using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.Framing;

namespace Estimator.Engine.Layout;

/// <summary>Where everything stands.</summary>
public sealed record HouseLayout
{
    /// <summary>The house it stands in.</summary>
    public required FramedHouse House { get; init; }

    /// <summary>Devices in canonical order; a device's index is its place here.</summary>
    public required ImmutableArray<LaidDevice> Devices { get; init; }

    /// <summary>Equipment in canonical order, existing and wired pieces left out.</summary>
    public required ImmutableArray<LaidEquipment> Equipment { get; init; }

    /// <summary>Panels, in the order of the job.</summary>
    public required ImmutableArray<LaidPanel> Panels { get; init; }

    /// <summary>What was assumed or could not be placed.</summary>
    public ImmutableArray<Finding> Findings { get; init; } = [];

    /// <summary>Page of the explanation book that holds the facts of this stage.</summary>
    public required ExplanationPage Page { get; init; }
}
