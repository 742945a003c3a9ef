using System.Collections.Immutable;

namespace Estimator.Engine.Wiring.Joints;

/// <summary>Gives each conductor of a cable its colour.</summary>
/// <remarks>
/// White is the neutral. A cable without one lends its white to the supply and it is marked again, so that the switched conductor back to the outlet is
/// never white. Source: NEC 200.7(C)(1).
/// </remarks>
internal static class CableColours
{
    private static readonly ImmutableArray<InsulationColour> Others = [InsulationColour.Black, InsulationColour.Red];

    /// <summary>The conductors of a cable, the bare one last.</summary>
    /// <param name="nets">What each insulated conductor is for.</param>
    internal static ImmutableArray<CableConductor> Of(ImmutableArray<Net> nets)
    {
        var white = White(nets);
        var conductors = ImmutableArray.CreateBuilder<CableConductor>(nets.Length + 1);
        var other = 0;
        for (var i = 0; i < nets.Length; i++)
        {
            conductors.Add(i == white
                ? new CableConductor(InsulationColour.White, nets[i], nets[i].Function is not (ConductorFunction.Neutral or ConductorFunction.Spare))
                : new CableConductor(Others[other++], nets[i], ReMarked: false));
        }

        conductors.Add(new CableConductor(InsulationColour.Bare, Net.Ground, ReMarked: false));
        return conductors.MoveToImmutable();
    }

    private static int White(ImmutableArray<Net> nets)
    {
        foreach (var wanted in (ReadOnlySpan<ConductorFunction>)[ConductorFunction.Neutral, ConductorFunction.Spare, ConductorFunction.Hot])
        {
            for (var i = nets.Length - 1; i >= 0; i--)
            {
                if (nets[i].Function == wanted)
                {
                    return i;
                }
            }
        }

        return nets.Length - 1;
    }
}
