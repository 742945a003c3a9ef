using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Wiring.Routing;

/// <summary>The cable of a wiring method.</summary>
internal static class FeedCable
{
    /// <summary>The cable that ways are compared on before the circuit is known.</summary>
    internal static CableType Reference => new(WiringMethod.NmB, WireSize.Awg14, 2);

    /// <summary>The job's cable of a size with so many insulated conductors.</summary>
    internal static CableType Of(Job job, WireSize size, int conductors) => new(MethodOf(job), size, conductors);

    private static WiringMethod MethodOf(Job job) =>
        job.Code.Amendments.FirstOrDefault(a => a.Kind is AmendmentKind.WiringMethod)?.WiringMethod ?? job.Practice.WiringMethod ?? WiringMethod.NmB;
}
