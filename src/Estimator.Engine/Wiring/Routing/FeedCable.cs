using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Wiring.Routing;

/// <summary>The cable of a wiring method.</summary>
internal static class FeedCable
{
    /// <summary>The cable that ways are compared on before the circuit is known.</summary>
    internal static CableType Reference => new(WiringMethod.NmB, WireSize.Awg14, 2);

    /// <summary>The cable that the search counts on: planning costs know size and conductors, whatever brings them along.</summary>
    internal static CableType Of(Job job, WireSize size, int conductors) => new(job.Practice.WiringMethod ?? WiringMethod.NmB, size, conductors);
}
