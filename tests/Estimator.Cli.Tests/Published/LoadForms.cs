using System.Text.Json.Nodes;

using Finder = System.Func<System.Text.Json.Nodes.JsonObject, System.Text.Json.Nodes.JsonNode?>;

namespace Estimator.Cli.Tests.Published;

/// <summary>Translates the forms of the published load examples.</summary>
internal static class LoadForms
{
    // Full-load current of single-phase motors at 230 V by horsepower: NEC table 430.248, from memory.
    private static readonly Dictionary<decimal, decimal> MotorAmperes = new() { [0.5m] = 4.9m, [0.75m] = 6.9m, [1m] = 8m, [1.5m] = 10m, [2m] = 12m, [3m] = 17m, [5m] = 28m, [7.5m] = 40m, [10m] = 50m };

    internal static (JsonObject Input, Dictionary<string, Finder> Names) Translate(string topic, JsonObject input)
    {
        ExampleForms.Known(
            input, "rule", "area_sqft", "length_ft", "width_ft", "small_appliance_circuits", "laundry_circuits", "range_kw", "range_va", "cooktop_va", "ovens_va", "dryer_kw", "dryer_va", "water_heater_kw",
            "water_heater_va", "dishwasher_kw", "dishwasher_va", "disposer_va", "compactor_va", "fastened", "space_heat_kw", "space_heaters_va", "central_heat_kw", "separately_controlled_heaters", "ac", "room_ac",
            "new_ac_va", "new_heat_va", "new_evse_va", "evse_va", "existing_heat", "volts", "lighting_volts");
        var to = new JsonObject { ["area_sqft"] = Area(input) };
        ExampleForms.Edition(input, to);
        foreach (var same in new[] { "small_appliance_circuits", "laundry_circuits", "volts", "lighting_volts" })
        {
            if (input[same] is { } value)
            {
                to[same] = ExampleForms.Copy(value);
            }
        }

        to["cooking_va"] = List([.. Kilo(input, "range_kw"), .. Va(input, "range_va"), .. Va(input, "cooktop_va"), .. Va(input, "ovens_va")]);
        to["dryers_va"] = List([.. Kilo(input, "dryer_kw"), .. Va(input, "dryer_va")]);
        decimal[] at120 = [.. Kilo(input, "dishwasher_kw"), .. Va(input, "dishwasher_va"), .. Va(input, "disposer_va"), .. Va(input, "compactor_va"), .. Fastened(input)];
        to["fastened_va"] = List([.. Kilo(input, "water_heater_kw"), .. Va(input, "water_heater_va"), .. at120]);
        to["fastened_120v_va"] = List(at120);
        to["evse_va"] = List([.. Va(input, "new_evse_va"), .. Va(input, "evse_va")]);
        to["heat_va"] = List([.. Kilo(input, "space_heat_kw"), .. Va(input, "space_heaters_va"), .. Kilo(input, "central_heat_kw")]);
        if (input["separately_controlled_heaters"] is { } controls)
        {
            to["heat_controls"] = ExampleForms.Copy(controls);
        }

        to["cooling_va"] = List([.. Cooling(input["ac"]), .. Cooling(input["room_ac"])]);
        to["new_heat_or_cooling_va"] = List([.. Va(input, "new_ac_va"), .. Va(input, "new_heat_va")]);
        to["service_a"] = 100;
        return (to, Names(input));
    }

    private static Dictionary<string, Finder> Names(JsonObject input)
    {
        var names = new Dictionary<string, Finder>
        {
            ["amps"] = ExampleForms.At("amperes"),
            ["exact_amps"] = ExampleForms.At("exact_amperes"),
            ["total_connected_va"] = ExampleForms.At("other_total_va"),
            ["first_10_kva"] = ExampleForms.At("first_block_va"),
            ["first_8_kva"] = ExampleForms.At("first_block_va"),
            ["remainder_at_40_va"] = ExampleForms.At("remainder_va"),
            ["heat_at_40_va"] = ExampleForms.At("heat_va"),
            ["heat_at_65_va"] = ExampleForms.At("heat_va"),
            ["appliances_75_va"] = ExampleForms.At("appliances_va"),
            ["appliance_total_va"] = ExampleForms.At("appliances_va"),
            ["copper_310_12"] = ExampleForms.At("service_copper"),
            ["fits_100_a"] = ExampleForms.At("fits"),
            ["lighting_amps"] = ExampleForms.At("lighting_amperes"),
            ["small_appliance_and_laundry_va"] = a => a["small_appliance_va"]!.GetValue<decimal>() + a["laundry_va"]!.GetValue<decimal>(),
            ["range_va"] = a => a["cooking_va"] is { } demand ? demand : Sum(input, "range_kw", 1000m) + Sum(input, "range_va", 1m),
            ["dryer_va"] = a => a["dryer_va"] is { } demand ? demand : Sum(input, "dryer_kw", 1000m) + Sum(input, "dryer_va", 1m),
            ["water_heater_va"] = _ => Sum(input, "water_heater_kw", 1000m) + Sum(input, "water_heater_va", 1m),
            ["dishwasher_va"] = _ => Sum(input, "dishwasher_kw", 1000m) + Sum(input, "dishwasher_va", 1m),
            ["ac_va"] = a => a["new_heat_or_cooling_va"] is { } added && added.GetValue<decimal>() > 0 ? added : a["cooling_va"],
            ["area_sqft"] = _ => Area(input),
            ["appliance_va"] = _ => List([.. Fastened(input)]),
            ["appliance_at_75_va"] = a => List([.. Fastened(input).Select(v => v * a["appliances_va"]!.GetValue<decimal>() / a["appliances_connected_va"]!.GetValue<decimal>())]),
            ["neutral"] = a => new JsonObject
            {
                ["lighting_va"] = ExampleForms.Copy(a["neutral_lighting_va"] ?? a["after_demand_va"]),
                ["lighting_demand_va"] = ExampleForms.Copy(a["neutral_lighting_va"] ?? a["after_demand_va"]),
                ["range_va"] = ExampleForms.Copy(a["neutral_range_va"]),
                ["dryer_va"] = ExampleForms.Copy(a["neutral_dryer_va"]),
                ["dishwasher_va"] = Sum(input, "dishwasher_kw", 1000m) + Sum(input, "dishwasher_va", 1m),
                ["total_va"] = ExampleForms.Copy(a["neutral_total_va"]),
                ["exact_amps"] = ExampleForms.Copy(a["neutral_amperes"]),
                ["amps"] = decimal.Floor(a["neutral_amperes"]!.GetValue<decimal>() + 0.5m),
            },
            ["circuits"] = a => new JsonObject
            {
                ["lighting_15"] = ExampleForms.Copy(a["lighting_circuits_15"]),
                ["lighting_20"] = ExampleForms.Copy(a["lighting_circuits_20"]),
                ["small_appliance"] = ExampleForms.Copy(a["small_appliance_circuits"]),
                ["laundry"] = ExampleForms.Copy(a["laundry_circuits"]),
                ["bathroom"] = ExampleForms.Copy(a["bathroom_circuits"]),
            },
        };
        foreach (var same in new[]
        {
            "lighting_va", "small_appliance_va", "laundry_va", "subtotal_va", "after_demand_va", "total_va", "min_service_a", "general_total_va", "general_demand_va", "hvac_used", "appliances_connected_va",
            "cooking_va", "heat_va", "service_a", "lighting_circuits_15", "lighting_circuits_20", "other_total_va", "other_demand_va", "evse_va", "cooling_va",
        })
        {
            names[same] = ExampleForms.At(same);
        }

        return names;
    }

    private static decimal Area(JsonObject input) => input["area_sqft"]?.GetValue<decimal>() ?? input["length_ft"]!.GetValue<decimal>() * input["width_ft"]!.GetValue<decimal>();

    private static IEnumerable<decimal> Kilo(JsonObject input, string field) => Va(input, field).Select(v => v * 1000m);

    private static IEnumerable<decimal> Va(JsonObject input, string field) => input[field] switch
    {
        null => [],
        JsonArray list => list.Select(n => n!.GetValue<decimal>()),
        { } one => [one.GetValue<decimal>()],
    };

    private static decimal Sum(JsonObject input, string field, decimal times) => Va(input, field).Sum() * times;

    private static IEnumerable<decimal> Fastened(JsonObject input) =>
        input["fastened"] is JsonArray list ? list.Select(f => f!["va"]?.GetValue<decimal>() ?? f["volts"]!.GetValue<decimal>() * f["amps"]!.GetValue<decimal>()) : [];

    private static IEnumerable<decimal> Cooling(JsonNode? unit) => unit switch
    {
        null => [],
        JsonArray units => units.SelectMany(Cooling),
        JsonObject o when o["va"] is { } va => [va.GetValue<decimal>()],
        JsonObject o when o["amps"] is { } amps => [amps.GetValue<decimal>() * o["volts"]!.GetValue<decimal>()],
        JsonObject o when o["hp"] is { } hp => [MotorAmperes[hp.GetValue<decimal>()] * o["volts"]!.GetValue<decimal>()],
        { } number => [number.GetValue<decimal>()],
    };

    private static JsonArray List(decimal[] values) => [.. values.Select(v => (JsonNode)v)];
}
