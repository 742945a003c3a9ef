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
    internal static CalcTopic Topic { get; } = new(
        "ampacity_ocpd", "Ampacity with correction and adjustment, largest breaker, or the circuit of a load",
        """{"size": "12", "insulation_c": 90, "current_carrying": 4}""",
        [
            CalcTopics.EditionField, new("size", "text", "Wire size."), new("sizes", "texts", "Wire sizes, for a list of answers."), new("material", "text", "copper or aluminium."),
            new("insulation_c", "number", "60, 75 or 90."), new("ambient_c", "number", "Ambient temperature."), new("current_carrying", "number", "Current-carrying conductors together."),
            new("cables", "texts", "Cables bundled together, such as 12/2 NM-B."), new("find", "text", "ampacity (left out), largest_breaker, nm_b, appliance, branch, evse, shares or yokes."),
            new("load_va", "number", "Load."), new("volts", "number", "Voltage."), new("amperes", "number", "Load current."), new("continuous", "flag", "Whether the load is continuous."),
            new("least_breaker_a", "number", "Smallest breaker for the load's receptacle."), new("nameplate_va", "numbers", "Nameplates of EV supply equipment."), new("circuits_a", "numbers", "Circuit ratings."),
        ],
        Run);

    private static JsonObject Run(CalcInput input) => (input.OptionalText("find") ?? (input.Has("cables") ? "bundle" : "ampacity")) switch
    {
        "ampacity" => Ampacity(input),
        "bundle" => Bundle(input),
        "largest_breaker" => new JsonObject { ["amperes"] = Answers.List(input.Sizes("sizes").Select(s => SmallConductor(s, Aluminium(input)) ?? StandardBreakers.AtMost(Column(s, Aluminium(input), 60)).Number())) },
        "nm_b" => new JsonObject { ["amperes"] = Answers.List(input.Sizes("sizes").Select(s => Row(s).Number("nm_b_ampacity_cu_334_80"))) },
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
        var insulation = (int)(input.OptionalNumber("insulation_c") ?? 75);
        var adjustment = AmpacityRules.Adjustment((int)(input.OptionalNumber("current_carrying") ?? 1)) / 100m;
        var correction = input.OptionalNumber("ambient_c") is { } ambient
            ? AmpacityRules.Ambient(ambient, insulation) ?? throw input.Wrong("ambient_c", $"{ambient}", $"a temperature at which {insulation} C insulation may be used")
            : 1m;
        var amperes = Column(size, aluminium, insulation) * correction * adjustment;
        return new JsonObject
        {
            ["correction"] = correction,
            ["adjustment"] = adjustment,
            ["amperes"] = amperes,
            ["max_breaker_a"] = LargestBreaker(size, aluminium, amperes),
        };
    }

    // Cable insulation is 90 C and is adjusted from there, but ends at 60 C, 334.80.
    private static JsonObject Bundle(CalcInput input)
    {
        var cables = input.Texts("cables").Select(c => Cable(input, c)).ToList();
        var conductors = cables.Sum(c => c.Conductors);
        var size = cables.Select(c => c.Size).Min();
        var factor = AmpacityRules.Adjustment(conductors) / 100m;
        var adjusted = Column(size, aluminium: false, 90) * factor;
        return new JsonObject
        {
            ["conductors"] = conductors,
            ["adjustment"] = factor,
            ["amperes"] = adjusted,
            ["max_breaker_a"] = LargestBreaker(size, aluminium: false, Math.Min(adjusted, Column(size, aluminium: false, 60))),
        };
    }

    private static (WireSize Size, int Conductors) Cable(CalcInput input, string text)
    {
        var parts = text.Split(' ')[0].Split('/', '-');
        return parts.Length == 2 && WireSize.Parse(parts[0]) is { Ok: true } size && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var count)
            ? (size.Value, count)
            : throw input.Wrong("cables", $"'{text}'", "cables such as 12/2 NM-B");
    }

    private static JsonObject Appliance(CalcInput input)
    {
        var amperes = input.Number("load_va") / input.Number("volts");
        var conductor = amperes * StandardBreakers.ContinuousPercent.Number() / 100m;
        var most = amperes * AmpacityRules.AppliancePercent / 100m;
        return new JsonObject
        {
            ["amperes"] = amperes,
            ["conductor_min_a"] = conductor,
            ["copper"] = SmallestCopper(StandardBreakers.AtLeast(conductor).Number()).ToString(),
            ["max_ocpd_calc_a"] = most,
            ["max_ocpd_a"] = StandardBreakers.AtLeast(most).Number(),
            ["smallest_ocpd_a"] = StandardBreakers.AtLeast(conductor).Number(),
        };
    }

    private static JsonObject Branch(CalcInput input)
    {
        var amperes = input.OptionalNumber("amperes") ?? input.Number("load_va") / input.Number("volts");
        var counted = input.Flag("continuous") ? amperes * StandardBreakers.ContinuousPercent.Number() / 100m : amperes;
        var breaker = StandardBreakers.AtLeast(Math.Max(counted, input.OptionalNumber("least_breaker_a") ?? 0)).Number();
        return new JsonObject { ["amperes"] = amperes, ["breaker_a"] = breaker, ["copper"] = SmallestCopper(breaker).ToString() };
    }

    private static JsonObject Shares(CalcInput input) => new()
    {
        ["portable_a"] = Answers.List(input.Numbers("circuits_a").Select(a => a * LoadRules.PortablePercent.Number() / 100m)),
        ["fastened_a"] = Answers.List(input.Numbers("circuits_a").Select(a => a * LoadRules.FastenedCircuitPercent.Number() / 100m)),
    };

    private static WireSize SmallestCopper(decimal breaker) =>
        WireSize.All.Where(s => s >= WireSize.Awg14 && Conductors.Has(s)).First(s => Column(s, aluminium: false, 60) >= breaker && (SmallConductor(s, aluminium: false) ?? decimal.MaxValue) >= breaker);

    private static decimal LargestBreaker(WireSize size, bool aluminium, decimal amperes) =>
        StandardBreakers.AtMost(Math.Min(amperes, SmallConductor(size, aluminium) ?? decimal.MaxValue)).Number();

    private static decimal? SmallConductor(WireSize size, bool aluminium)
    {
        var column = aluminium ? "ocpd_max_al_240_4_D" : "ocpd_max_cu_240_4_D";
        return Row(size).Has(column) ? Row(size).Number(column) : null;
    }

    private static decimal Column(WireSize size, bool aluminium, int insulation)
    {
        var column = $"ampacity_{(aluminium ? "al" : "cu")}_{insulation}C";
        return Row(size).Has(column) ? Row(size).Number(column) : throw new WrongInputException($"standard input: $: found {size} at {insulation} C; accepted: a size and insulation of table 310.16 (60, 75 or 90).");
    }

    private static RuleRow Row(WireSize size) => Conductors.Has(size)
        ? Conductors.For(size)
        : throw new WrongInputException($"standard input: $.size: found '{size}'; accepted: one of {string.Join(", ", Conductors.All.Select(c => c.Key))}.");

    private static bool Aluminium(CalcInput input) => (input.OptionalText("material") ?? "copper") switch
    {
        "copper" => false,
        "aluminium" or "aluminum" => true,
        var other => throw input.Wrong("material", $"'{other}'", "copper or aluminium"),
    };
}
