using Estimator.Engine.Wiring.Joints;

namespace Estimator.Engine.Tests.Wiring.Simulation;

/// <summary>A circuit with its switches in one position each: which points are one piece of metal.</summary>
/// <param name="piece">The piece that a point belongs to; below zero for no such point.</param>
internal sealed class CircuitState(Func<string, int> piece)
{
    internal bool Has(string point) => piece(point) >= 0;

    internal bool Meets(string point, PanelTerminal panel) => Has(point) && piece(point) == piece($"panel/{panel}");

    /// <summary>Whether no two of breaker, second pole, neutral and ground are one piece.</summary>
    internal bool Apart()
    {
        var pieces = Enum.GetValues<PanelTerminal>().Select(t => piece($"panel/{t}")).Where(p => p >= 0).ToList();
        return pieces.Distinct().Count() == pieces.Count;
    }
}
