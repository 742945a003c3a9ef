using Estimator.Engine.Rules;
using Estimator.Engine.Wiring;

namespace Estimator.Engine.Purchase;

/// <summary>How far the cut plan of one cable is searched.</summary>
public static class CuttingSteps
{
    private const long Million = 1_000_000;

    /// <summary>Steps of the search.</summary>
    public static long For(SearchDepth depth) =>
        Million * (long)(depth is SearchDepth.Quick ? WiringSettings.QuickCuttingSteps : WiringSettings.CuttingSteps).Number();
}
