using System.Collections.Immutable;
using Estimator.Engine.House;

namespace Estimator.Web.Labor;

/// <summary>Something that the user states of the whole job and that its hours turn on.</summary>
/// <param name="Label">What is stated.</param>
/// <param name="Read">Whether it is stated.</param>
/// <param name="Write">States it, or takes it back.</param>
public sealed record FactorStatement(string Label, Func<Practice, bool> Read, Func<Practice, bool, Practice> Write)
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<FactorStatement> All { get; } =
    [
        new("The house is lived in and furnished during the work", p => p.Occupied, (p, on) => p with { Occupied = on }),
        new("The job takes less than a day", p => p.SmallJob, (p, on) => p with { SmallJob = on }),
        new("Material is carried up to a second storey", p => p.CarriedUp, (p, on) => p with { CarriedUp = on }),
        new("Rooms that repeat another go faster", p => p.RepeatedRooms, (p, on) => p with { RepeatedRooms = on }),
        new("Bores are counted apart from pulling cable", p => p.BoresApart, (p, on) => p with { BoresApart = on }),
    ];
}
