using Estimator.Engine.House;

namespace Estimator.Web.Site;

/// <summary>Trade words for what is stated of a site.</summary>
public static class SiteWords
{
    /// <summary>What is not known.</summary>
    public static string Of(UnknownTopic topic) => topic switch
    {
        UnknownTopic.WallType => "What the walls are made of",
        UnknownTopic.AtticAccess => "Whether the attic can be reached",
        UnknownTopic.GroundingPresent => "Whether old outlets are grounded",
        UnknownTopic.OldWiring => "What old wiring is there",
        UnknownTopic.Ungrounded => "Old outlets have no ground",
        UnknownTopic.KnobAndTube => "Old wiring is knob and tube",
        UnknownTopic.AluminiumWiring => "Old circuits are of aluminium",
        UnknownTopic.SharedNeutrals => "Old circuits share neutrals",
        UnknownTopic.PanelMake => "Make and series of the panel",
        UnknownTopic.Service => "Ampacity and condition of the service",
        UnknownTopic.Other => "Something else",
        _ => throw new ArgumentOutOfRangeException(nameof(topic), topic, "No such topic."),
    };

    /// <summary>Whether framing can be reached.</summary>
    public static string Of(WallState walls) => walls switch
    {
        WallState.Open => "open framing",
        WallState.Finished => "finished walls",
        _ => throw new ArgumentOutOfRangeException(nameof(walls), walls, "No such state."),
    };

    /// <summary>What walls are made of.</summary>
    public static string Of(WallBuild build) => build switch
    {
        WallBuild.WoodStuds => "wood studs",
        WallBuild.PlasterAndLath => "plaster and lath",
        WallBuild.MetalStuds => "metal studs",
        WallBuild.FurredMasonry => "masonry, furred",
        _ => throw new ArgumentOutOfRangeException(nameof(build), build, "No such walls."),
    };

    /// <summary>Which way joists run.</summary>
    public static string Of(JoistDirection direction) => direction switch
    {
        JoistDirection.ShorterSpan => "the shorter way",
        JoistDirection.AlongX => "east and west",
        JoistDirection.AlongY => "north and south",
        _ => throw new ArgumentOutOfRangeException(nameof(direction), direction, "No such direction."),
    };

    /// <summary>What lies under the lowest floor.</summary>
    public static string Of(UnderFloor under) => under switch
    {
        UnderFloor.Slab => "slab, no cable passes",
        UnderFloor.Crawl => "crawl space",
        _ => throw new ArgumentOutOfRangeException(nameof(under), under, "No such floor."),
    };

    /// <summary>How conductors are run.</summary>
    public static string Of(WiringMethod method) => method switch
    {
        WiringMethod.NmB => "NM-B cable",
        WiringMethod.Mc => "MC cable",
        WiringMethod.Emt => "EMT with conductors",
        WiringMethod.Uf => "UF cable",
        WiringMethod.BuriedConduit => "conduit in the ground",
        _ => throw new ArgumentOutOfRangeException(nameof(method), method, "No such method."),
    };

    /// <summary>Which circuits share a neutral.</summary>
    public static string Of(MultiwireUse use) => use switch
    {
        MultiwireUse.None => "none",
        MultiwireUse.SmallAppliance => "small-appliance circuits, where it saves",
        MultiwireUse.Every => "all of several outlets, where it saves",
        _ => throw new ArgumentOutOfRangeException(nameof(use), use, "No such use."),
    };

    /// <summary>Where ground-fault protection sits.</summary>
    public static string Of(ControlFeed feed) => feed switch
    {
        ControlFeed.Cheaper => "whichever costs less",
        ControlFeed.AtSwitch => "at the switch",
        ControlFeed.AtLight => "at the light",
        _ => throw new ArgumentOutOfRangeException(nameof(feed), feed, "No such choice."),
    };

    /// <summary>In words.</summary>
    public static string Of(GroundFaultBy by) => by switch
    {
        GroundFaultBy.Cheaper => "whichever costs less",
        GroundFaultBy.Breaker => "the breaker",
        GroundFaultBy.FirstReceptacle => "the first receptacle",
        _ => throw new ArgumentOutOfRangeException(nameof(by), by, "No such place."),
    };

    /// <summary>What a local rule does to the edition's.</summary>
    public static string Of(AmendmentKind kind) => kind switch
    {
        AmendmentKind.Raise => "asks for more than",
        AmendmentKind.Relax => "asks for less than",
        AmendmentKind.Replace => "changes the figure of",
        AmendmentKind.Add => "adds",
        AmendmentKind.WiringMethod => "asks for the method",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind."),
    };
}
