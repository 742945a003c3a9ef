using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Wiring.Routing;

/// <summary>How the conductors of a run are brought along.</summary>
/// <remarks>
/// A local rule that forces a method holds everywhere; else the room says, else the firm's practice, else it is NM-B. A run keeps one method from end to
/// end: where the rooms of its two boxes differ, the one that protects better. Where the panel hangs forces nothing on its home runs.
/// Source: common practice, no source.
/// </remarks>
public static class RunMethods
{
    private static readonly ImmutableArray<WiringMethod> ByProtection = [WiringMethod.NmB, WiringMethod.Uf, WiringMethod.Mc, WiringMethod.BuriedConduit, WiringMethod.Emt];

    /// <summary>The method in a room.</summary>
    public static WiringMethod In(Job job, Room room) =>
        job.Code.Amendments.FirstOrDefault(a => a.Kind is AmendmentKind.WiringMethod)?.WiringMethod ?? room.WiringMethod ?? job.Practice.WiringMethod ?? WiringMethod.NmB;

    /// <summary>The method of a run between boxes of rooms.</summary>
    public static WiringMethod Between(Job job, IEnumerable<Room> rooms) => rooms.Select(r => In(job, r)).MaxBy(m => ByProtection.IndexOf(m));

    /// <summary>The method of a run from building to building; what lies in the ground goes on to the boxes at both ends, so that it stays one piece.</summary>
    /// <remarks>UF cable may be run indoors where NM may. Source: NEC 340.10(4), from memory.</remarks>
    public static WiringMethod InGround(Job job, Room from, Room to) =>
        BurialRules.MethodOf(job, job.Buildings.First(b => b.Id == (to.Building ?? from.Building)));

    /// <summary>Whether boxes of a method are metal.</summary>
    public static bool TakesMetalBoxes(WiringMethod method) => method is WiringMethod.Mc or WiringMethod.Emt;

    /// <summary>The raceway of a method, as the rule tables call it; null for cable.</summary>
    public static string? Raceway(WiringMethod method) => method switch
    {
        WiringMethod.Emt => "emt",
        WiringMethod.BuriedConduit => "pvc",
        _ => null,
    };
}
