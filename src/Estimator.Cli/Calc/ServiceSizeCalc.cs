using System.Text.Json.Nodes;
using Estimator.Engine.Loads;
using Estimator.Engine.Rules;

namespace Estimator.Cli.Calc;

/// <summary>Conductors of services, grounding conductors, and lighting circuits by floor area.</summary>
internal static class ServiceSizeCalc
{
    internal static CalcTopic Topic { get; } = new(
        "service_size", "Service conductors, grounding conductor, lighting circuits by area, or lighting and small-appliance load",
        """{"find": "lighting_circuits", "area_sqft": 1500, "volts": 120}""",
        [
            CalcTopics.EditionField, new("find", "text", "service_conductors, grounding_conductor, lighting_circuits, area_per_circuit or general_load."), new("rating_a", "number", "Service rating."),
            new("device_a", "number", "Overcurrent device."), new("area_sqft", "number", "Floor area."), new("floors_ft", "objects", "Floors by width_ft and length_ft.") { Of = [new("width_ft", "number", "Width."), new("length_ft", "number", "Length.")] }, new("va_per_sqft", "number", "Unit load; left out, the table's."),
            CalcField.Volts("volts", "Voltage, 120 where left out."), new("circuit_a", "number", "Circuit rating.", 1m), CalcField.Count("small_appliance", "Small-appliance circuits."), CalcField.Count("laundry", "Laundry circuits."),
        ],
        Run);

    private static JsonObject Run(CalcInput input) => input.Text("find") switch
    {
        "service_conductors" => ServiceConductors.ForRating(input.Number("rating_a")) is { } row
            ? new JsonObject { ["copper"] = row.Text("copper"), ["aluminium"] = row.Text("aluminium"), ["need_a"] = input.Number("rating_a") * LoadRules.ServiceConductorPercent.Number() / 100m }
            : throw input.Wrong("rating_a", $"{input.Number("rating_a")}", "a rating to 400 A"),
        "grounding_conductor" => ServiceConductors.Grounding(input.Number("device_a")) is { } row
            ? new JsonObject { ["copper"] = row.Text("copper"), ["aluminium"] = row.Text("aluminium") }
            : throw input.Wrong("device_a", $"{input.Number("device_a")}", "a device to 800 A"),
        "lighting_circuits" => Circuits(input),
        "area_per_circuit" => new JsonObject { ["sqft"] = Volts(input) * input.Number("circuit_a") / Unit(input) },
        "general_load" => General(input),
        var other => throw input.Wrong("find", $"'{other}'", "service_conductors, grounding_conductor, lighting_circuits, area_per_circuit or general_load"),
    };

    private static JsonObject Circuits(CalcInput input)
    {
        var area = input.Has("floors_ft") ? input.Objects("floors_ft").Sum(f => f.Number("width_ft") * f.Number("length_ft")) : input.Number("area_sqft");
        var va = area * Unit(input);
        decimal Count(decimal amperes) => decimal.Ceiling(va / (Volts(input) * amperes));
        var answer = new JsonObject { ["area_sqft"] = area, ["va"] = va, ["amperes"] = va / Volts(input), ["circuits_15"] = Count(15), ["circuits_20"] = Count(20) };
        if (input.OptionalNumber("circuit_a") is { } circuit)
        {
            answer["circuits"] = Count(circuit);
        }

        return answer;
    }

    private static JsonObject General(CalcInput input)
    {
        var page = input.Page;
        var va = input.Number("area_sqft") * Unit(input) + input.Number("small_appliance") * LoadRules.SmallAppliance.Number() + input.Number("laundry") * LoadRules.Laundry.Number();
        return new JsonObject { ["va"] = va, ["after_demand_va"] = BlockDemand.Parts(page, input.Given("area_sqft", va, Engine.Explanations.Unit.VoltAmperes), DemandTables.Lighting).Sum(p => p.Value) };
    }

    private static decimal Unit(CalcInput input) => input.OptionalNumber("va_per_sqft") ?? LoadRules.UnitLoadForCircuits.Number();

    private static decimal Volts(CalcInput input) => input.OptionalNumber("volts") ?? CircuitVolts;

    private static decimal CircuitVolts => 120m;
}
