using System.Collections.Immutable;
using Estimator.Engine.Explanations;

namespace Estimator.Engine.Loads;

/// <summary>What a dwelling load calculation starts from. All loads in volt-amperes; kilowatts of ranges and dryers count as kilovolt-amperes.</summary>
public sealed record LoadInput
{
    /// <summary>Year of the edition.</summary>
    public required int Year { get; init; }

    /// <summary>Floor area.</summary>
    public required Fact AreaSquareFeet { get; init; }

    /// <summary>Small-appliance circuits.</summary>
    public required Fact SmallApplianceCircuits { get; init; }

    /// <summary>Laundry circuits.</summary>
    public required Fact LaundryCircuits { get; init; }

    /// <summary>Ranges, ovens and cooktops, each with its nameplate.</summary>
    public ImmutableArray<Fact> Cooking { get; init; } = [];

    /// <summary>Dryers.</summary>
    public ImmutableArray<Fact> Dryers { get; init; } = [];

    /// <summary>Other fastened or dedicated appliances.</summary>
    public ImmutableArray<Fact> Fastened { get; init; } = [];

    /// <summary>Those of the fastened appliances that run at 120 V and so load the neutral.</summary>
    public ImmutableArray<Fact> FastenedOnNeutral { get; init; } = [];

    /// <summary>Motors among the appliances; compressors stand with the cooling.</summary>
    public ImmutableArray<Fact> Motors { get; init; } = [];

    /// <summary>Those of the motors that run at 120 V and so load the neutral.</summary>
    public ImmutableArray<Fact> MotorsOnNeutral { get; init; } = [];

    /// <summary>EV supply equipment.</summary>
    public ImmutableArray<Fact> Evse { get; init; } = [];

    /// <summary>Fixed electric space heat.</summary>
    public ImmutableArray<Fact> SpaceHeat { get; init; } = [];

    /// <summary>Separate controls of the space heat.</summary>
    public int HeatControls { get; init; } = 1;

    /// <summary>Cooling, or the compressor of a heat pump.</summary>
    public ImmutableArray<Fact> Cooling { get; init; } = [];

    /// <summary>Whether the cooling is a heat pump that runs together with the space heat.</summary>
    public bool HeatPump { get; init; }

    /// <summary>Heat or cooling that is new to an existing dwelling.</summary>
    public ImmutableArray<Fact> NewHeatOrCooling { get; init; } = [];

    /// <summary>Voltage of the service.</summary>
    public required Fact Volts { get; init; }
}
