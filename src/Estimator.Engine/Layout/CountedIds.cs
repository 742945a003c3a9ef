using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Layout;

/// <summary>Ids of devices that a room has by number.</summary>
public static class CountedIds
{
    /// <summary>Ids of the devices of one kind and purpose, such as <c>R1/duplex_receptacle-2</c>. Numbers that devices in their place have already are left out.</summary>
    public static ImmutableArray<string> Of(Room room, DeviceKind kind, ServedPlace serves, int count)
    {
        var stem = serves is ServedPlace.Room ? $"{room.Id}/{Words.Snake(kind)}-" : $"{room.Id}/{Words.Snake(kind)}-{Words.Snake(serves)}-";
        var taken = room.Placed.Where(p => p.Id.StartsWith(stem, StringComparison.Ordinal)).Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        return [.. Enumerable.Range(1, Math.Max(0, count) + taken.Count).Select(n => $"{stem}{n}").Where(id => !taken.Contains(id)).Take(Math.Max(0, count))];
    }
}
