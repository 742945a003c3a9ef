using System.Globalization;
using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;

namespace Estimator.Documents.Explanations;

/// <summary>Writes a figure with its unit, in invariant text.</summary>
public static class FigureText
{
    /// <summary>The figure of a node: lengths in feet and inches, money with a dollar sign.</summary>
    public static string Of(ExplanationNode node) => node.Unit switch
    {
        Unit.Length => LengthOf(node.Value).ToString(),
        Unit.Dollars => string.Create(CultureInfo.InvariantCulture, $"${node.Value:0.00##}"),
        Unit.Percent => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.####}%"),
        Unit.Each or Unit.Factor => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.######}"),
        Unit.Feet => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.###} ft"),
        Unit.SquareFeet => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.##} sq ft"),
        Unit.CubicInches => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.###} cu in"),
        Unit.Hours => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.####} h"),
        Unit.Amperes => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.###} A"),
        Unit.VoltAmperes => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.##} VA"),
        Unit.Volts => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.####} V"),
        Unit.Ohms => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.######} ohm"),
        _ => throw new ArgumentOutOfRangeException(nameof(node), node.Unit, "The unit has no words."),
    };

    /// <summary>The words of a unit, as they stand beside a number; empty for plain numbers.</summary>
    public static string UnitWords(Unit unit) => unit switch
    {
        Unit.Each or Unit.Factor => "",
        Unit.Length => "ft in",
        Unit.Feet => "ft",
        Unit.SquareFeet => "sq ft",
        Unit.CubicInches => "cu in",
        Unit.Hours => "h",
        Unit.Dollars => "$",
        Unit.Amperes => "A",
        Unit.VoltAmperes => "VA",
        Unit.Volts => "V",
        Unit.Ohms => "ohm",
        Unit.Percent => "%",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "The unit has no words."),
    };

    internal static Length LengthOf(decimal nanometres) => Length.FromNanometres(decimal.ToInt64(decimal.Round(nanometres, 0, MidpointRounding.AwayFromZero)));
}
