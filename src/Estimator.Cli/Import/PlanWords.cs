using Estimator.Engine.House;

namespace Estimator.Cli.Import;

/// <summary>What the words of a neutral plan mean here.</summary>
internal static class PlanWords
{
    private static readonly Dictionary<string, RoomKind> Rooms = new(StringComparer.Ordinal)
    {
        ["living"] = RoomKind.Living,
        ["dining"] = RoomKind.Dining,
        ["living_dining"] = RoomKind.Living,
        ["kitchen"] = RoomKind.Kitchen,
        ["kitchen_dining"] = RoomKind.Kitchen,
        ["kitchen_living"] = RoomKind.Kitchen,
        ["bedroom"] = RoomKind.Bedroom,
        ["room"] = RoomKind.Habitable,
        ["office"] = RoomKind.Office,
        ["bathroom"] = RoomKind.Bathroom,
        ["hall"] = RoomKind.Hall,
        ["stair"] = RoomKind.Stair,
        ["closet"] = RoomKind.Closet,
        ["storage"] = RoomKind.Storage,
        ["laundry"] = RoomKind.Laundry,
        ["utility"] = RoomKind.Utility,
        ["garage"] = RoomKind.Garage,
        ["basement"] = RoomKind.Basement,
        ["attic"] = RoomKind.Attic,
        ["crawl"] = RoomKind.Crawl,
        ["sunroom"] = RoomKind.Sunroom,
        ["balcony"] = RoomKind.Outdoors,
        ["shaft"] = RoomKind.Void,
        ["void"] = RoomKind.Void,
        ["elevator"] = RoomKind.Void,
        ["other"] = RoomKind.Other,
    };

    private static readonly Dictionary<string, OpeningKind> Openings = new(StringComparer.Ordinal)
    {
        ["door"] = OpeningKind.Door,
        ["entrance_door"] = OpeningKind.EntranceDoor,
        ["sliding_door"] = OpeningKind.SlidingDoor,
        ["window"] = OpeningKind.Window,
        ["open"] = OpeningKind.WideOpening,
    };

    private static readonly Dictionary<string, FixtureKind> Fixtures = new(StringComparer.Ordinal)
    {
        ["toilet"] = FixtureKind.Toilet,
        ["sink"] = FixtureKind.Sink,
        ["shower"] = FixtureKind.Shower,
        ["bathtub"] = FixtureKind.Bathtub,
        ["kitchen"] = FixtureKind.Kitchen,
        ["stairs"] = FixtureKind.Stairs,
    };

    internal static RoomKind Room(string word) => Find(Rooms, word, "room type");

    internal static OpeningKind Opening(string word) => Find(Openings, word, "opening kind");

    /// <summary>The fixture; null for one that no rule measures from.</summary>
    internal static FixtureKind? Fixture(string word) => Fixtures.TryGetValue(word, out var kind) ? kind : null;

    private static T Find<T>(Dictionary<string, T> words, string word, string what) => words.TryGetValue(word, out var value)
        ? value
        : throw new WrongInputException($"plan: {what}: found '{word}'; one of {string.Join(", ", words.Keys)} is accepted.");
}
