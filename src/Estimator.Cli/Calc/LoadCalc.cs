using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Estimator.Engine.Explanations;
using Estimator.Engine.Loads;
using Estimator.Engine.Rules;

namespace Estimator.Cli.Calc;

/// <summary>Dwelling load calculations.</summary>
internal static class LoadCalc
{
    private static readonly ImmutableArray<CalcField> Fields =
    [
        CalcTopics.EditionField, new("area_sqft", "number", "Floor area."), CalcField.Count("small_appliance_circuits", "Small-appliance circuits."), CalcField.Count("laundry_circuits", "Laundry circuits."),
        new("cooking_va", "numbers", "Nameplates of ranges, ovens and cooktops."), new("dryers_va", "numbers", "Nameplates of dryers."), new("fastened_va", "numbers", "Nameplates of other fastened appliances."),
        new("fastened_120v_va", "numbers", "Those of them that run at 120 V."), new("motors_va", "numbers", "Those of them that are motors; the largest counts a quarter more."), new("motors_120v_va", "numbers", "Motors at 120 V."), new("evse_va", "numbers", "EV supply equipment."), new("heat_va", "numbers", "Electric space heat."),
        CalcField.Count("heat_controls", "Separate controls of the heat."), new("cooling_va", "numbers", "Cooling, or a heat pump's compressor."), new("heat_pump", "flag", "Whether compressor and heat run together."),
        new("new_heat_or_cooling_va", "numbers", "Heat or cooling that is new to an existing dwelling."), CalcField.Volts("volts", "Service voltage, 240 where left out."), CalcField.Volts("lighting_volts", "Voltage of lighting circuits, 120 where left out."),
        new("service_a", "number", "Service rating to be judged."),
    ];

    internal static CalcTopic Standard { get; } = new(
        "load_standard", "Dwelling load, standard method", """{"area_sqft": 1500, "small_appliance_circuits": 2, "laundry_circuits": 1, "cooking_va": [12000], "dryers_va": [5500]}""",
        Fields, i => Answer(i, loads => loads.Standard()));

    internal static CalcTopic Optional { get; } = new(
        "load_optional", "Dwelling load, optional method", """{"area_sqft": 1500, "small_appliance_circuits": 2, "laundry_circuits": 1, "cooking_va": [12000], "heat_va": [9000], "heat_controls": 5}""",
        Fields, i => Answer(i, loads => loads.Optional()));

    internal static CalcTopic Existing { get; } = new(
        "load_existing", "Load of an existing dwelling with what is added", """{"area_sqft": 1500, "small_appliance_circuits": 2, "laundry_circuits": 1, "cooking_va": [12000], "new_heat_or_cooling_va": [5000]}""",
        Fields, i => Answer(i, loads => loads.Existing()));

    private static JsonObject Answer(CalcInput input, Func<DwellingLoads, LoadWorksheet> method)
    {
        var sheet = method(new DwellingLoads(input.Page, Input(input)));
        var answer = new JsonObject { ["method"] = sheet.Method, ["article"] = sheet.Article };
        foreach (var line in sheet.Lines)
        {
            answer[line.Id] = line.Value.Value;
        }

        answer["hvac_used"] = sheet.HeatUsed switch { true => "heat", false => "cooling", null => null };
        answer["min_service_a"] = LoadRules.ServiceLeast.Number();
        Service(answer, Math.Max(sheet.Amperes.Value, LoadRules.ServiceLeast.Number()));
        if (input.OptionalNumber("service_a") is { } rating)
        {
            answer["fits"] = sheet.ExactAmperes.Value <= rating;
        }

        Circuits(input, answer);
        return answer;
    }

    // Beyond the tables no rating and no conductor is named; the note says so.
    private static void Service(JsonObject answer, decimal amperes)
    {
        var service = amperes <= StandardBreakers.Largest ? StandardBreakers.AtLeast(amperes).Number() : (decimal?)null;
        answer["service_a"] = service;
        answer["service_copper"] = service is { } rating ? ServiceConductors.ForRating(rating)?.Text("copper") : null;
        if (service is null)
        {
            answer["note"] = $"The tables end at {StandardBreakers.Largest} A: a service of this size is for an engineer and the utility.";
        }
    }

    private static LoadInput Input(CalcInput input)
    {
        ImmutableArray<Fact> Va(string field) => [.. input.Numbers(field).Select(v => input.Given(field, v, Unit.VoltAmperes))];
        return new LoadInput
        {
            Year = input.Year,
            AreaSquareFeet = input.Given("area_sqft", input.OptionalNumber("area_sqft") ?? 0m, Unit.SquareFeet),
            SmallApplianceCircuits = input.Given("small_appliance_circuits", input.OptionalNumber("small_appliance_circuits") ?? 2m, Unit.Each),
            LaundryCircuits = input.Given("laundry_circuits", input.OptionalNumber("laundry_circuits") ?? 1m, Unit.Each),
            Cooking = Va("cooking_va"),
            Dryers = Va("dryers_va"),
            Fastened = Va("fastened_va"),
            FastenedOnNeutral = Va("fastened_120v_va"),
            Motors = Va("motors_va"),
            MotorsOnNeutral = Va("motors_120v_va"),
            Evse = Va("evse_va"),
            SpaceHeat = Va("heat_va"),
            HeatControls = input.Has("heat_controls") ? input.Whole("heat_controls") : 1,
            Cooling = Va("cooling_va"),
            HeatPump = input.Flag("heat_pump"),
            NewHeatOrCooling = Va("new_heat_or_cooling_va"),
            Volts = input.Given("volts", input.OptionalNumber("volts") ?? 240m, Unit.Volts),
        };
    }

    private static void Circuits(CalcInput input, JsonObject answer)
    {
        var volts = input.OptionalNumber("lighting_volts") ?? 120m;
        var va = (input.OptionalNumber("area_sqft") ?? 0m) * LoadRules.UnitLoadForCircuits.Number();
        answer["lighting_amperes"] = va / volts;
        answer["lighting_circuits_15"] = decimal.Ceiling(va / (volts * 15m));
        answer["lighting_circuits_20"] = decimal.Ceiling(va / (volts * 20m));
        answer["small_appliance_circuits"] = input.OptionalNumber("small_appliance_circuits") ?? 2m;
        answer["laundry_circuits"] = input.OptionalNumber("laundry_circuits") ?? 1m;
        answer["bathroom_circuits"] = 1;
    }
}
