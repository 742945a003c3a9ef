using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>How this firm works. Each value left out follows the practice table, whose basis is common practice.</summary>
public sealed record Practice
{
    /// <summary>Wanted distance between wall receptacles, where tighter than the code's; null places the code minimum.</summary>
    public Length? ReceptacleSpacing { get; init; }

    /// <summary>Outlets on a 20 A general circuit at most.</summary>
    [JsonPropertyName("outlets_per_20a")]
    public int? OutletsPer20A { get; init; }

    /// <summary>Outlets on a 15 A general circuit at most.</summary>
    [JsonPropertyName("outlets_per_15a")]
    public int? OutletsPer15A { get; init; }

    /// <summary>Whether lights and receptacles share 20 A circuits in 12 AWG, or lights have 15 A circuits in 14 AWG of their own.</summary>
    public bool? MixLightsAndReceptacles { get; init; }

    /// <summary>Where ground-fault protection sits.</summary>
    public GroundFaultBy? GroundFaultBy { get; init; }

    /// <summary>Where the feed of a control with one switch box comes in.</summary>
    public ControlFeed? ControlFeed { get; init; }

    /// <summary>Which circuits share a neutral two by two; null for none.</summary>
    public MultiwireUse? Multiwire { get; init; }

    /// <summary>Box centre of wall receptacles above the floor.</summary>
    public Length? ReceptacleHeight { get; init; }

    /// <summary>Box centre of switches above the floor.</summary>
    public Length? SwitchHeight { get; init; }

    /// <summary>Cable left at each single-gang or ceiling box, for each entry.</summary>
    public Length? BoxTail { get; init; }

    /// <summary>Cable left at the panel for each home run.</summary>
    public Length? PanelTail { get; init; }

    /// <summary>Slack on the path of each run.</summary>
    public Percent? RunSlackPercent { get; init; }

    /// <summary>What each piece of cable is cut longer than its run, for a site that differs from the plan.</summary>
    public Percent? CutTolerancePercent { get; init; }

    /// <summary>Cable lost at each cut.</summary>
    public Length? CutTrim { get; init; }

    /// <summary>From which length the end of a coil is worth keeping.</summary>
    public Length? UsefulEnd { get; init; }

    /// <summary>What is bought beyond the takeoff, in percent by category of the catalogue; cable has <see cref="CutTolerancePercent"/> instead.</summary>
    public ImmutableSortedDictionary<string, Percent> SparePercents { get; init; } = ImmutableSortedDictionary<string, Percent>.Empty;

    /// <summary>Highest voltage drop of a branch circuit that is accepted without a thicker conductor.</summary>
    public Percent? BranchVoltageDropPercent { get; init; }

    /// <summary>Widest strip between the outlines of two rooms that is taken for a wall.</summary>
    public Length? MaximumWallThickness { get; init; }

    /// <summary>Wiring method; null is NM-B.</summary>
    public WiringMethod? WiringMethod { get; init; }

    /// <summary>Whether the house is lived in and furnished during the work.</summary>
    public bool Occupied { get; init; }

    /// <summary>Whether the whole job takes less than a day.</summary>
    public bool SmallJob { get; init; }

    /// <summary>Whether material is carried up to a second storey or higher.</summary>
    public bool CarriedUp { get; init; }

    /// <summary>Whether rooms that repeat another one go faster.</summary>
    public bool RepeatedRooms { get; init; }

    /// <summary>Whether bores are counted apart from pulling; else the hours of a cable take them in. It is one of them and never both.</summary>
    public bool BoresApart { get; init; }
}
