using System.Globalization;
using System.Text.Json.Nodes;
using Estimator.Engine.Explanations;
using Estimator.Engine.Loads;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Cli.Calc;

/// <summary>Ampacity of conductors, and breaker and conductor of a load.</summary>
internal static class AmpacityCalc
{
    private const int MostInCable = 100;

    internal static CalcTopic Topic { get; } = new(
        "ampacity_ocpd", "Ampacity with correction and adjustment, largest breaker, or the circuit of a load",
        """{"size": "12", "insulation_c": 90, "current_carrying": 4}""",
        [
            CalcTopics.EditionField, new("size", "text", "Wire size."), new("sizes", "texts", "Wire sizes, for a list of answers."), new("material", "text", "copper or aluminium."),
            new("insulation_c", "whole", "60, 75 or 90.", 60m, 90m), new("ambient_c", "number", "Ambient temperature.", -60m, 150m), CalcField.Count("current_carrying", "Current-carrying conductors together.", least: 1m),
            new("cables", "texts", "Cables bundled together, such as 12/2 NM-B."), new("find", "text", "ampacity (left out), largest_breaker, nm_b, appliance, branch, evse, shares or yokes."),
            new("load_va", "number", "Load."), CalcField.Volts("volts", "Voltage."), new("amperes", "number", "Load current."), new("continuous", "flag", "Whether the load is continuous."),
            new("least_breaker_a", "number", "Smallest breaker for the load's receptacle."), new("nameplate_va", "numbers", "Nameplates of EV supply equipment."), new("circuits_a", "numbers", "Circuit ratings."),
        ],
        Run);

    private static JsonObject Run(CalcInput input) => (input.OptionalText("find") ?? (input.Has("cables") ? "bundle" : "ampacity")) switch
    {
        "ampacity" => Ampacity(input),
        "bundle" => Bundle(input),
        "largest_breaker" => new JsonObject { ["amperes"] = Answers.List(input.Sizes("sizes").Select(s => SmallConductor(input, s, Aluminium(input)) ?? StandardBreakers.AtMost(Column(input, s, Aluminium(input), 60)).Number())) },
        "nm_b" => new JsonObject { ["amperes"] = Answers.List(input.Sizes("sizes").Select(s => Cell(input, s, "nm_b_ampacity_cu_334_80", "a size of NM-B cable"))) },
        "appliance" => Appliance(input),
        "branch" => Branch(input),
        "evse" => new JsonObject { ["load_va"] = Answers.List(input.Numbers("nameplate_va").Select(n => DwellingLoads.Evse(input.Page, input.Year, input.Given("nameplate_va", n, Unit.VoltAmperes)).Value)) },
        "shares" => Shares(input),
        "yokes" => new JsonObject
        {
            ["most"] = Answers.List(input.Numbers("circuits_a").Select(a => decimal.Floor(a * input.Number("volts") / LoadRules.YokeVa.Number()))),
            ["dwelling_limit"] = null,
        },
        var other => throw input.Wrong("find", $"'{other}'", "ampacity, largest_breaker, nm_b, appliance, branch, evse, shares or yokes"),
    };

    private static JsonObject Ampacity(CalcInput input)
    {
        var (size, aluminium) = (input.Size("size"), Aluminium(input));
        var insulation = input.Has("insulation_c") ? input.Whole("insulation_c") : 75;
        var adjustment = AmpacityRules.Adjustment(input.Has("current_carrying") ? input.Whole("current_carrying") : 1) / 100m;
        var correction = input.OptionalNumber("ambient_c") is { } ambient
            ? AmpacityRules.Ambient(ambient, insulation) ?? throw input.Wrong("ambient_c", $"{ambient}", $"a temperature at which {insulation} C insulation may be used")
            : 1m;
        var amperes = Column(input, size, aluminium, insulation) * correction * adjustment;
        return new JsonObject
        {
            ["correction"] = correction,
            ["adjustment"] = adjustment,
            ["amperes"] = amperes,
            ["max_breaker_a"] = LargestBreaker(input, size, aluminium, amperes),
        };
    }

    // Cable insulation is 90 C and is adjusted from there, but ends at 60 C, 334.80.
    private static JsonObject Bundle(CalcInput input)
    {
        var cables = input.Texts("cables").Select(c => Cable(input, c)).ToList();
        if (cables.Count == 0)
        {
            throw input.Wrong("cables", "an empty list", "cables such as 12/2 NM-B");
        }

        var conductors = cables.Sum(c => c.Conductors);
        var size = cables.Select(c => c.Size).Min();
        var factor = AmpacityRules.Adjustment(conductors) / 100m;
        var adjusted = Column(input, size, aluminium: false, 90) * factor;
        return new JsonObject
        {
            ["conductors"] = conductors,
            ["adjustment"] = factor,
            ["amperes"] = adjusted,
            ["max_breaker_a"] = LargestBreaker(input, size, aluminium: false, Math.Min(adjusted, Column(input, size, aluminium: false, 60))),
        };
    }

    private static (WireSize Size, int Conductors) Cable(CalcInput input, string text)
    {
        var parts = text.Split(' ')[0].Split('/', '-');
        return parts.Length == 2 && WireSize.Parse(parts[0]) is { Ok: true } size && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is >= 1 and <= MostInCable
            ? (size.Value, count)
            : throw input.Wrong("cables", $"'{text}'", $"cables such as 12/2 NM-B, of 1 to {MostInCable} conductors");
    }

    private static JsonObject Appliance(CalcInput input)
    {
        var amperes = input.Number("load_va") / input.Number("volts");
        var conductor = amperes * StandardBreakers.ContinuousPercent.Number() / 100m;
        var most = amperes * AmpacityRules.AppliancePercent / 100m;
        var smallest = Standard(input, "load_va", conductor);
        return new JsonObject
        {
            ["amperes"] = amperes,
            ["conductor_min_a"] = conductor,
            ["copper"] = SmallestCopper(input, "load_va", smallest).ToString(),
            ["max_ocpd_calc_a"] = most,
            ["max_ocpd_a"] = Standard(input, "load_va", most),
            ["smallest_ocpd_a"] = smallest,
        };
    }

    private static JsonObject Branch(CalcInput input)
    {
        var load = input.Has("amperes") ? "amperes" : "load_va";
        var amperes = input.OptionalNumber("amperes") ?? input.Number("load_va") / input.Number("volts");
        var counted = input.Flag("continuous") ? amperes * StandardBreakers.ContinuousPercent.Number() / 100m : amperes;
        var breaker = Standard(input, load, Math.Max(counted, input.OptionalNumber("least_breaker_a") ?? 0));
        return new JsonObject { ["amperes"] = amperes, ["breaker_a"] = breaker, ["copper"] = SmallestCopper(input, load, breaker).ToString() };
    }

    private static JsonObject Shares(CalcInput input) => new()
    {
        ["portable_a"] = Answers.List(input.Numbers("circuits_a").Select(a => a * LoadRules.PortablePercent.Number() / 100m)),
        ["fastened_a"] = Answers.List(input.Numbers("circuits_a").Select(a => a * LoadRules.FastenedCircuitPercent.Number() / 100m)),
    };

    private static decimal Standard(CalcInput input, string field, decimal amperes) => amperes <= StandardBreakers.Largest
        ? StandardBreakers.AtLeast(amperes).Number()
        : throw input.Wrong(field, $"a load that asks for a device of {amperes:0.#} A", $"a load for a device to {StandardBreakers.Largest} A, the largest of the table");

    private static WireSize SmallestCopper(CalcInput input, string field, decimal breaker)
    {
        var known = WireSize.All.Where(s => s >= WireSize.Awg14 && Conductors.Has(s)).ToList();
        return known.Where(s => Carries(input, s) >= breaker).Cast<WireSize?>().FirstOrDefault()
            ?? throw input.Wrong(field, $"a load that asks for a conductor of {breaker} A", $"a load for {known.Max(s => Carries(input, s))} A, which {known[^1]} carries at 60 C");
    }

    private static decimal Carries(CalcInput input, WireSize size) =>
        Math.Min(Column(input, size, aluminium: false, 60), SmallConductor(input, size, aluminium: false) ?? decimal.MaxValue);

    // No answer where the conductor carries less than the smallest device protects at.
    private static decimal? LargestBreaker(CalcInput input, WireSize size, bool aluminium, decimal amperes) =>
        Math.Min(amperes, SmallConductor(input, size, aluminium) ?? decimal.MaxValue) is var most && most >= StandardBreakers.Smallest
            ? StandardBreakers.AtMost(most).Number()
            : null;

    private static decimal? SmallConductor(CalcInput input, WireSize size, bool aluminium)
    {
        var column = aluminium ? "ocpd_max_al_240_4_D" : "ocpd_max_cu_240_4_D";
        return Row(input, size).Has(column) ? Row(input, size).Number(column) : null;
    }

    private static decimal Column(CalcInput input, WireSize size, bool aluminium, int insulation) =>
        Cell(input, size, $"ampacity_{(aluminium ? "al" : "cu")}_{insulation}C", "a size, material and insulation (60, 75 or 90) of table 310.16");

    private static decimal Cell(CalcInput input, WireSize size, string column, string accepted) => Row(input, size).Has(column)
        ? Row(input, size).Number(column)
        : throw input.Wrong(SizeField(input), $"'{size}', for which the table has no {column}", accepted);

    private static RuleRow Row(CalcInput input, WireSize size) => Conductors.Has(size)
        ? Conductors.For(size)
        : throw input.Wrong(SizeField(input), $"'{size}'", $"one of {string.Join(", ", Conductors.All.Select(c => c.Key))}");

    private static string SizeField(CalcInput input) => input.Has("cables") ? "cables" : input.Has("sizes") ? "sizes" : "size";

    private static bool Aluminium(CalcInput input) => (input.OptionalText("material") ?? "copper") switch
    {
        "copper" => false,
        "aluminium" or "aluminum" => true,
        var other => throw input.Wrong("material", $"'{other}'", "copper or aluminium"),
    };
}
