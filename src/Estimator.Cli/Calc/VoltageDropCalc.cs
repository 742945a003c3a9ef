using System.Text.Json.Nodes;
using Estimator.Engine.Rules;

namespace Estimator.Cli.Calc;

/// <summary>Voltage drop and what belongs to it.</summary>
/// <remarks>Drop = conductors x resistance x length x current, or conductors x K x length x current over circular mils; three-phase takes the root of three. Source: NEC chapter 9 tables 8 and 9.</remarks>
internal static class VoltageDropCalc
{
    private const decimal RootOfThree = 1.7320508075688772935274463m;

    internal static CalcTopic Topic { get; } = new(
        "voltage_drop", "Voltage lost in a run; or its resistance; or the longest run; or the lowest voltage; or power and resistance",
        """{"size": "12", "amperes": 16, "one_way_ft": 100, "volts": 120}""",
        [
            CalcTopics.EditionField, new("size", "text", "Wire size."), new("amperes", "number", "Current."), new("load_va", "number", "Load, where the current is not given."),
            new("one_way_ft", "number", "Length, one way."), new("ohm_per_kft", "number", "Resistance of a thousand feet; left out, the table's."), new("k", "number", "K in ohm-circular mils a foot, instead."),
            CalcField.Volts("volts", "Voltage of the source."), new("phases", "whole", "1 or 3.", 1m, 3m), new("percent", "number", "Accepted drop, in percent.", 0m, 100m),
            new("find", "text", "drop (left out), resistance, longest, lowest_voltage or power."), new("length_ft", "number", "Length of a conductor whose resistance is wanted."),
        ],
        Run);

    private static JsonObject Run(CalcInput input) => (input.OptionalText("find") ?? "drop") switch
    {
        "drop" => Drop(input),
        "resistance" => new JsonObject { ["ohms"] = input.Number("ohm_per_kft") * input.Number("length_ft") / 1000m },
        "longest" => new JsonObject { ["feet"] = input.Number("volts") * input.Number("percent") / 100m / (Factor(input) * OhmsPerFoot(input) * Amperes(input)) },
        "lowest_voltage" => Lowest(input),
        "power" => new JsonObject { ["watts"] = input.Number("volts") * input.Number("amperes"), ["ohms"] = input.Number("volts") / input.Number("amperes") },
        var other => throw input.Wrong("find", $"'{other}'", "drop, resistance, longest, lowest_voltage or power"),
    };

    private static JsonObject Drop(CalcInput input)
    {
        var amperes = Amperes(input);
        var volts = Factor(input) * OhmsPerFoot(input) * input.Number("one_way_ft") * amperes;
        var answer = new JsonObject { ["amperes"] = amperes, ["volts"] = volts };
        if (input.OptionalNumber("volts") is { } source)
        {
            answer["percent"] = 100m * volts / source;
        }

        return answer;
    }

    private static JsonObject Lowest(CalcInput input)
    {
        var drop = input.Number("volts") * input.Number("percent") / 100m;
        return new JsonObject { ["max_drop"] = drop, ["min_volts"] = input.Number("volts") - drop };
    }

    private static decimal Amperes(CalcInput input) => input.OptionalNumber("amperes")
        ?? input.Number("load_va") / input.Number("volts") / (input.OptionalNumber("phases") == 3 ? RootOfThree : 1m);

    private static decimal Factor(CalcInput input) => input.OptionalNumber("phases") switch
    {
        null or 1 => 2m,
        3 => RootOfThree,
        var other => throw input.Wrong("phases", $"{other}", "1 or 3"),
    };

    private static decimal OhmsPerFoot(CalcInput input)
    {
        if (input.OptionalNumber("ohm_per_kft") is { } ohms)
        {
            return ohms / 1000m;
        }

        var size = input.Size("size");
        var column = input.Has("k") ? "area_cmil" : "ac_ohm_per_kft_cu_pvc_75C";
        if (!Conductors.Has(size) || !Conductors.For(size).Has(column))
        {
            throw input.Wrong("size", $"'{size}'", $"one of {string.Join(", ", Conductors.All.Where(c => c.Has(column)).Select(c => c.Key))}");
        }

        var figure = Conductors.For(size).Number(column);
        return input.OptionalNumber("k") is { } k ? k / figure : figure / 1000m;
    }
}
