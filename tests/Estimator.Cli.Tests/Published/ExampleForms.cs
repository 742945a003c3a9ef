using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

using Finder = System.Func<System.Text.Json.Nodes.JsonObject, System.Text.Json.Nodes.JsonNode?>;

namespace Estimator.Cli.Tests.Published;

/// <summary>Translates the forms of the published examples to the calculators' own fields, and their answers back. By form, never by row.</summary>
internal static partial class ExampleForms
{
    internal static bool Skipped(string key) => key is "flag" || key.StartsWith("published", StringComparison.Ordinal);

    internal static (JsonObject Input, Dictionary<string, Finder> Names) Translate(string topic, JsonObject input, JsonObject expected) => topic switch
    {
        "box_fill" => BoxFill(input),
        "voltage_drop" => VoltageDrop(input),
        "ampacity_ocpd" => Ampacity(input),
        "range_demand" => RangeDemand(input, expected),
        "service_size" => ServiceSize(input),
        "receptacle_count" => ReceptacleCount(input),
        "support_count" => Support(input),
        "nail_plate" => NailPlate(input),
        "unit_conversion" => Conversion(input),
        "markup_margin" => Markup(input),
        "load_standard" or "load_optional" or "load_existing" => LoadForms.Translate(topic, input),
        _ => throw new InvalidOperationException($"No form of topic {topic} is known."),
    };

    internal static Finder At(string field) => answer => answer[field];

    internal static JsonNode? Copy(JsonNode? node) => node?.DeepClone();

    internal static void Known(JsonObject input, params ReadOnlySpan<string> fields)
    {
        var known = fields.ToArray().Concat(["note", "edition", "example", "derived_from", "find"]).ToHashSet();
        var unknown = input.Select(p => p.Key).FirstOrDefault(k => !known.Contains(k));
        if (unknown is not null)
        {
            throw new InvalidOperationException($"The form with {unknown} is not known.");
        }
    }

    internal static void Edition(JsonObject input, JsonObject to)
    {
        if (input["edition"] is { } edition)
        {
            to["edition"] = edition.ToString() == "1970s" ? "1975" : edition.ToString();
        }
    }

    private static string Find(JsonObject input) => input["find"]?.GetValue<string>() ?? "";

    private static decimal NumberIn(string text) => decimal.Parse(NumberWords().Match(text).Value, System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\d+(\.\d+)?")]
    private static partial Regex NumberWords();

    private static (JsonObject, Dictionary<string, Finder>) BoxFill(JsonObject input)
    {
        var find = Find(input);
        var to = new JsonObject();
        Edition(input, to);
        if (find.StartsWith("max conductors", StringComparison.Ordinal))
        {
            Known(input, "box", "boxes", "awg");
            to["boxes"] = Copy(input["boxes"] ?? input["box"]);
            to["size"] = Copy(input["awg"]);
            return (to, new() { ["max"] = At("most_conductors") });
        }

        if (find.StartsWith("smallest", StringComparison.Ordinal))
        {
            Known(input, "conductors");
            var words = find.Split(' ');
            to["conductors"] = Copy(input["conductors"]);
            to["trade_width"] = words[1];
            to["box_type"] = words.First(w => w is "square" or "octagonal" or "round" or "device");
            var names = new Dictionary<string, Finder> { ["box"] = At("box"), ["volume_in3"] = At("volume_in3") };
            foreach (var size in input["conductors"]!.AsObject().Select(p => p.Key))
            {
                names[$"max_{size}"] = At($"most_{size}");
            }

            return (to, names);
        }

        Known(input, "conductors", "egc", "isolated_egc", "internal_clamps", "yokes", "pigtails", "box_in3", "studs", "hickeys", "terminal_blocks");
        foreach (var (theirs, ours) in new[] { ("conductors", "conductors"), ("egc", "grounds"), ("isolated_egc", "isolated_grounds"), ("pigtails", "pigtails"), ("internal_clamps", "internal_clamps"), ("box_in3", "box_volume_in3"), ("studs", "studs"), ("hickeys", "hickeys"), ("terminal_blocks", "terminal_blocks") })
        {
            if (input[theirs] is { } value)
            {
                to[ours] = Copy(value);
            }
        }

        if (input["yokes"] is JsonArray yokes)
        {
            to["yokes"] = new JsonArray([.. yokes.Select(y =>
            {
                var yoke = new JsonObject { ["size"] = Copy(y!["awg"]) };
                if (y["gangs"] is { } gangs)
                {
                    yoke["gangs"] = Copy(gangs);
                }

                return (JsonNode)yoke;
            })]);
        }

        return (to, new() { ["required_in3"] = At("required_in3"), ["fits"] = At("fits"), ["same_under_2017_in3"] = At("required_2017_in3") });
    }

    private static (JsonObject, Dictionary<string, Finder>) VoltageDrop(JsonObject input)
    {
        Known(input, "awg", "amps", "one_way_ft", "ohm_per_kft", "k", "volts", "phases", "load_va", "source_volts", "length_ft");
        var find = Find(input);
        var to = new JsonObject();
        foreach (var (theirs, ours) in new[] { ("awg", "size"), ("amps", "amperes"), ("one_way_ft", "one_way_ft"), ("ohm_per_kft", "ohm_per_kft"), ("k", "k"), ("volts", "volts"), ("source_volts", "volts"), ("phases", "phases"), ("load_va", "load_va"), ("length_ft", "length_ft") })
        {
            if (input[theirs] is { } value)
            {
                to[ours] = Copy(value);
            }
        }

        if (find.Length > 0)
        {
            to["find"] = find.Contains("lowest", StringComparison.Ordinal) ? "lowest_voltage" : find.Contains("longest", StringComparison.Ordinal) ? "longest" : find.Contains("power", StringComparison.Ordinal) ? "power" : "resistance";
            if (find.Contains('%', StringComparison.Ordinal))
            {
                to["percent"] = NumberIn(find);
            }
        }

        return (to, new()
        {
            ["volts"] = At("volts"),
            ["percent"] = At("percent"),
            ["exact_volts"] = At("volts"),
            ["amps"] = At("amperes"),
            ["ohms"] = At("ohms"),
            ["feet"] = At("feet"),
            ["max_drop"] = At("max_drop"),
            ["min_volts"] = At("min_volts"),
            ["watts"] = At("watts"),
        });
    }

    private static (JsonObject, Dictionary<string, Finder>) Ampacity(JsonObject input)
    {
        var find = Find(input);
        var to = new JsonObject();
        Edition(input, to);
        if (input["cables"] is { } cables)
        {
            Known(input, "cables", "bundled");
            to["cables"] = Copy(cables);
            return (to, new() { ["conductors"] = At("conductors"), ["factor"] = At("adjustment"), ["adjusted_a"] = At("amperes"), ["max_breaker_a"] = At("max_breaker_a") });
        }

        if (input["appliance"] is not null)
        {
            Known(input, "appliance", "watts", "volts");
            (to["find"], to["load_va"], to["volts"]) = ("appliance", Copy(input["watts"]), Copy(input["volts"]));
            return (to, new() { ["amps"] = At("amperes"), ["conductor_min_a"] = At("conductor_min_a"), ["copper"] = At("copper"), ["max_ocpd_calc_a"] = At("max_ocpd_calc_a"), ["max_ocpd_a"] = At("max_ocpd_a"), ["smallest_standard_ocpd_a"] = At("smallest_ocpd_a") });
        }

        if (input["nameplate_va"] is { } nameplates)
        {
            Known(input, "load", "nameplate_va");
            (to["find"], to["nameplate_va"]) = ("evse", Copy(nameplates));
            return (to, new() { ["load_va"] = At("load_va") });
        }

        if (input["load"] is not null)
        {
            Known(input, "load", "amps", "continuous", "volts");
            (to["find"], to["amperes"], to["continuous"]) = ("branch", Copy(input["amps"]), Copy(input["continuous"]));
            return (to, new() { ["circuit_a"] = At("breaker_a"), ["copper"] = At("copper") });
        }

        if (input["dryer_va"] is { } dryer)
        {
            // A dryer's receptacle is a 30 A one: common practice, no source.
            Known(input, "dryer_va", "volts");
            (to["find"], to["load_va"], to["volts"], to["least_breaker_a"]) = ("branch", Copy(dryer), Copy(input["volts"]), 30);
            return (to, new() { ["amps"] = At("amperes"), ["breaker_a"] = At("breaker_a"), ["copper"] = At("copper") });
        }

        if (input["circuit_a"] is { } circuits)
        {
            Known(input, "circuit_a", "volts");
            to["circuits_a"] = circuits is JsonArray ? Copy(circuits) : new JsonArray(Copy(circuits));
            to["find"] = find.Contains("yokes", StringComparison.Ordinal) ? "yokes" : "shares";
            if (input["volts"] is { } volts)
            {
                to["volts"] = Copy(volts);
            }

            return (to, new() { ["portable_a"] = At("portable_a"), ["fastened_a"] = At("fastened_a"), ["max"] = At("most"), ["dwelling_limit"] = At("dwelling_limit") });
        }

        foreach (var (theirs, kind, material) in new[] { ("nm_b", "nm_b", "copper"), ("copper", "largest_breaker", "copper"), ("aluminium", "largest_breaker", "aluminium") })
        {
            if (input[theirs] is JsonArray sizes)
            {
                Known(input, theirs);
                (to["find"], to["sizes"], to["material"]) = (kind, Copy(sizes), material);
                return (to, new() { ["amps"] = At("amperes") });
            }
        }

        Known(input, "awg", "material", "column", "ambient_c", "conductors");
        (to["size"], to["material"], to["insulation_c"]) = (Copy(input["awg"]), Copy(input["material"]), Copy(input["column"]));
        if (input["ambient_c"] is { } ambient)
        {
            to["ambient_c"] = Copy(ambient);
        }

        if (input["conductors"] is { } together)
        {
            to["current_carrying"] = Copy(together);
        }

        return (to, new() { ["amps"] = At("amperes"), ["factor"] = At("adjustment"), ["adjusted_a"] = At("amperes"), ["max_breaker_a"] = At("max_breaker_a") });
    }

    private static (JsonObject, Dictionary<string, Finder>) RangeDemand(JsonObject input, JsonObject expected)
    {
        Known(input, "ranges_kw", "ovens_kw", "cooktop_kw", "dryers_kva", "branch_circuit", "same_room", "column");
        var to = new JsonObject();
        Edition(input, to);
        foreach (var (theirs, ours) in new[] { ("ranges_kw", "ranges_kw"), ("ovens_kw", "ovens_kw"), ("cooktop_kw", "cooktops_kw"), ("dryers_kva", "dryers_kva"), ("branch_circuit", "one_branch_circuit") })
        {
            if (input[theirs] is { } value)
            {
                to[ours] = Copy(value);
            }
        }

        if (Find(input).Contains("note 3", StringComparison.Ordinal) || input["column"] is not null)
        {
            to["note_3"] = true;
        }

        var names = new Dictionary<string, Finder>
        {
            ["kw"] = At("kw"),
            ["base_kw"] = At("base_kw"),
            ["as_one_range_kw"] = At("as_one_range_kw"),
            ["amps_240"] = At("amperes"),
            ["kva"] = At("kva"),
            ["factor_percent"] = At("factor_percent"),
            ["column_a_kw"] = At("column_a_kw"),
            ["column_b_kw"] = At("column_b_kw"),
        };
        foreach (var key in expected.Select(e => e.Key).Where(k => k.StartsWith("column_c_", StringComparison.Ordinal)))
        {
            names[key] = At("column_c_kw");
        }

        return (to, names);
    }

    private static (JsonObject, Dictionary<string, Finder>) ServiceSize(JsonObject input)
    {
        Known(input, "rating_a", "table", "ocpd_a", "area_sqft", "va_per_sqft", "volts", "circuit_a", "floors_ft", "small_appliance", "laundry");
        var find = Find(input);
        var to = new JsonObject();
        foreach (var (theirs, ours) in new[] { ("rating_a", "rating_a"), ("ocpd_a", "device_a"), ("area_sqft", "area_sqft"), ("va_per_sqft", "va_per_sqft"), ("volts", "volts"), ("circuit_a", "circuit_a"), ("small_appliance", "small_appliance"), ("laundry", "laundry") })
        {
            if (input[theirs] is { } value)
            {
                to[ours] = Copy(value);
            }
        }

        if (input["floors_ft"] is JsonArray floors)
        {
            to["floors_ft"] = new JsonArray([.. floors.Select(f => (JsonNode)new JsonObject { ["width_ft"] = Copy(f![0]), ["length_ft"] = Copy(f[1]) })]);
        }

        to["find"] = find switch
        {
            "" => "service_conductors",
            "equipment grounding conductor" => "grounding_conductor",
            "lighting circuits" => "lighting_circuits",
            "area per circuit" => "area_per_circuit",
            "lighting, small appliance and laundry VA" => "general_load",
            _ => throw new InvalidOperationException($"The form '{find}' is not known."),
        };
        return (to, new()
        {
            ["copper"] = At("copper"),
            ["aluminium"] = At("aluminium"),
            ["need_a"] = At("need_a"),
            ["va"] = At("va"),
            ["amps"] = At("amperes"),
            ["circuits_15"] = At("circuits_15"),
            ["circuits_20"] = At("circuits_20"),
            ["circuits"] = At("circuits"),
            ["sqft"] = At("sqft"),
            ["area_sqft"] = At("area_sqft"),
            ["after_demand_va"] = At("after_demand_va"),
        });
    }

    private static (JsonObject, Dictionary<string, Finder>) ReceptacleCount(JsonObject input)
    {
        Known(input, "room_ft", "openings_ft", "corners_break_wall", "island_sqft", "wall_spaces_in", "wall_spaces_ft", "separated_by_doors", "hallway_ft", "counter_in", "garage_bays", "basement_unfinished_portions", "one_family");
        var to = new JsonObject();
        Edition(input, to);
        foreach (var (theirs, ours) in new[] { ("room_ft", "room_ft"), ("openings_ft", "openings_ft"), ("island_sqft", "islands_sqft"), ("wall_spaces_ft", "wall_spaces_ft"), ("hallway_ft", "hallways_ft"), ("counter_in", "counters_in"), ("garage_bays", "garage_bays"), ("basement_unfinished_portions", "basement_portions"), ("one_family", "one_family") })
        {
            if (input[theirs] is { } value)
            {
                to[ours] = Copy(value);
            }
        }

        if (input["wall_spaces_in"] is JsonArray inches)
        {
            to["wall_spaces_ft"] = new JsonArray([.. inches.Select(i => (JsonNode)(i!.GetValue<decimal>() / 12m))]);
        }

        Finder count = answer => answer["count"] ?? answer["wall_spaces"] ?? answer["counters"] ?? answer["hallways"] ?? answer["islands"];
        return (to, new()
        {
            ["count"] = count,
            ["wall_ft"] = At("wall_ft"),
            ["garage"] = At("garage"),
            ["basement"] = At("basement"),
            ["outdoor_min"] = At("outdoor_min"),
            ["laundry_min"] = At("laundry_min"),
        });
    }

    private static (JsonObject, Dictionary<string, Finder>) Support(JsonObject input)
    {
        Known(input, "run_ft", "along_framing", "end_in", "cable", "interval_ft", "first_in_from_box", "first_in_single_gang_no_clamp", "max_free_cable_in_2020_on");
        var to = new JsonObject();
        foreach (var (theirs, ours) in new[] { ("run_ft", "run_ft"), ("end_in", "first_from_box_in"), ("interval_ft", "spacing_ft"), ("first_in_from_box", "from_box_in"), ("first_in_single_gang_no_clamp", "from_small_box_in"), ("max_free_cable_in_2020_on", "free_cable_in") })
        {
            if (input[theirs] is { } value)
            {
                to[ours] = Copy(value);
            }
        }

        return (to, new() { ["fasteners"] = At("fasteners"), ["ok"] = At("ok") });
    }

    private static (JsonObject, Dictionary<string, Finder>) NailPlate(JsonObject input)
    {
        Known(input, "member_depth_in", "hole_in", "centred");
        return (new JsonObject { ["member_depth_in"] = Copy(input["member_depth_in"]), ["hole_in"] = Copy(input["hole_in"]) }, new() { ["edge_in"] = At("edge_in"), ["plate"] = At("plate") });
    }

    private static (JsonObject, Dictionary<string, Finder>) Conversion(JsonObject input)
    {
        Known(input, "awg", "ohm_per_kft", "in3", "ft", "labour_minutes");
        var to = new JsonObject();
        foreach (var (theirs, ours) in new[] { ("awg", "awg"), ("ohm_per_kft", "ohm_per_kft"), ("in3", "in3"), ("ft", "ft"), ("labour_minutes", "minutes") })
        {
            if (input[theirs] is { } value)
            {
                to[ours] = Copy(value);
            }
        }

        return (to, new() { ["mm"] = At("mm"), ["mm2"] = At("mm2"), ["ohm_per_km"] = At("ohm_per_km"), ["cm3"] = At("cm3"), ["m"] = At("paired_m"), ["exact_m"] = At("exact_m"), ["hours"] = At("hours") });
    }

    private static (JsonObject, Dictionary<string, Finder>) Markup(JsonObject input)
    {
        Known(input, "cost", "markup_percent", "target_margin_percent");
        var to = new JsonObject();
        foreach (var (theirs, ours) in new[] { ("cost", "cost"), ("markup_percent", "markup_percent"), ("target_margin_percent", "margin_percent") })
        {
            if (input[theirs] is { } value)
            {
                to[ours] = Copy(value);
            }
        }

        return (to, new() { ["price"] = At("price"), ["margin_percent"] = At("margin_percent"), ["markup_percent"] = At("markup_percent") });
    }
}
