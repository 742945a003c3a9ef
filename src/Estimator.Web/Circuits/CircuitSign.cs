namespace Estimator.Web.Circuits;

/// <summary>How a circuit is told apart on drawings: hue, dash and number together. Hues repeat after six, numbers never.</summary>
/// <param name="Number">Its number, 1 for the first.</param>
public readonly record struct CircuitSign(int Number)
{
    private const int Hues = 6;

    /// <summary>Class of its line.</summary>
    public string Line => $"ckt k{(Number - 1) % Hues + 1}";

    /// <summary>Its hue, as a token.</summary>
    public string Hue => ((Number - 1) % Hues) switch { 0 => "var(--c-blue)", 1 => "var(--c-purple)", 2 => "var(--c-black)", 3 => "var(--c-sky)", 4 => "var(--c-orange)", _ => "var(--c-blue)" };
}
