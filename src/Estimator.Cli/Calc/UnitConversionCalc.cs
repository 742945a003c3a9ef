using System.Text.Json.Nodes;

namespace Estimator.Cli.Calc;

/// <summary>Conversions of the trade.</summary>
/// <remarks>AWG diameter = 0.127 mm x 92 to the power (36 - n) / 39. Source: ASTM B258 definition (from memory); international foot and inch.</remarks>
internal static class UnitConversionCalc
{
    private const decimal FeetPerMetre = 3.280839895013123m;
    private const decimal CubicCentimetresPerCubicInch = 16.387064m;
    private const decimal MetresPerFoot = 0.3048m;

    internal static CalcTopic Topic { get; } = new(
        "unit_conversion", "AWG to millimetres, ohms a thousand feet to ohms a kilometre, cubic inches, feet, minutes",
        """{"awg": ["14", "12"]}""",
        [
            CalcTopics.EditionField, new("awg", "texts", "Wire sizes, solid."), new("ohm_per_kft", "number", "Resistance of a thousand feet."), new("in3", "numbers", "Cubic inches."), new("ft", "numbers", "Feet."),
            new("minutes", "numbers", "Minutes of work."),
        ],
        Run);

    private static JsonObject Run(CalcInput input)
    {
        var answer = new JsonObject();
        if (input.Has("awg"))
        {
            var diameters = input.Sizes("awg").Select(s => Diameter(input, s.ToString())).ToList();
            answer["mm"] = Answers.List(diameters.Select(d => (decimal)d));
            answer["mm2"] = Answers.List(diameters.Select(d => (decimal)(Math.PI * d * d / 4)));
        }

        if (input.OptionalNumber("ohm_per_kft") is { } ohms)
        {
            answer["ohm_per_km"] = ohms * FeetPerMetre;
        }

        if (input.Has("in3"))
        {
            answer["cm3"] = Answers.List(input.Numbers("in3").Select(v => v * CubicCentimetresPerCubicInch));
        }

        if (input.Has("ft"))
        {
            answer["exact_m"] = Answers.List(input.Numbers("ft").Select(f => f * MetresPerFoot));
            answer["paired_m"] = Answers.List(input.Numbers("ft").Select(f => decimal.Round(f * MetresPerFoot, 1, MidpointRounding.AwayFromZero)));
        }

        if (input.Has("minutes"))
        {
            answer["hours"] = Answers.List(input.Numbers("minutes").Select(m => m / 60m));
        }

        return answer;
    }

    private static double Diameter(CalcInput input, string size)
    {
        var number = size switch { "1/0" => 0, "2/0" => -1, "3/0" => -2, "4/0" => -3, _ => int.TryParse(size, out var n) && n <= 40 ? n : throw input.Wrong("awg", $"'{size}'", "a size of the American wire gauge, 18 to 4/0") };
        return 0.127 * Math.Pow(92, (36 - number) / 39.0);
    }
}
