using Estimator.Engine.House;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>How much a general circuit takes.</summary>
/// <remarks>Source: the firm's practice; common practice, no source, for what it leaves out.</remarks>
internal static class CircuitRoom
{
    /// <summary>Whether a circuit of 120 V takes so many outlets with so much load.</summary>
    internal static bool Holds(Job job, CircuitKind kind, decimal breakerA, int outlets, int loadVa)
    {
        var full = breakerA * CircuitRatings.Volts.Number();
        var most = breakerA > CircuitRatings.For(CircuitKind.Lighting).Number()
            ? job.Practice.OutletsPer20A ?? PracticeDefaults.OutletsPer20A.Number()
            : job.Practice.OutletsPer15A ?? PracticeDefaults.OutletsPer15A.Number();
        var byLoad = loadVa <= full * PracticeDefaults.LightingLoadShare.Number() / 100m;
        return kind is CircuitKind.Lighting && job.Practice.OutletsPer15A is null ? byLoad : byLoad && outlets <= most;
    }
}
