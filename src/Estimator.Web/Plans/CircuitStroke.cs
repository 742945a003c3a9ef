namespace Estimator.Web.Plans;

/// <summary>How a circuit is drawn: hue and dash pattern together, with its number beside them.</summary>
/// <remarks>Five hues (Okabe and Ito, 2008; their greens, yellow and vermilion stay free for findings) and six dash patterns, both turning with the number: no two of thirty are alike.</remarks>
public static class CircuitStroke
{
    /// <summary>How many circuits are told apart by stroke alone.</summary>
    public const int Distinct = Hues * Dashes;

    private const int Hues = 5;
    private const int Dashes = 6;

    /// <summary>The classes of the stroke of a circuit by its number from 1.</summary>
    public static string Classes(int number) => $"hue{(number - 1) % Hues + 1} dash{(number - 1) % Dashes + 1}";
}
