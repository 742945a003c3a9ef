using System.Text.Json.Nodes;

namespace Estimator.Cli.Tests.BadInput;

/// <summary>A calculator refuses what gives no answer, with the field, what was found and what is accepted, and never names a size beyond its tables.</summary>
public sealed class BadCalcTests
{
    [Theory]
    [InlineData("ampacity_ocpd", """{"find":"branch","amperes":100000}""", "$.amperes", "a device to 400 A")]
    [InlineData("ampacity_ocpd", """{"find":"branch","amperes":300}""", "$.amperes", "195 A, which 4/0 carries")]
    [InlineData("ampacity_ocpd", """{"find":"appliance","load_va":1000000,"volts":240}""", "$.load_va", "a device to 400 A")]
    [InlineData("ampacity_ocpd", """{"find":"branch","amperes":-5}""", "$.amperes", "a number from 0")]
    [InlineData("ampacity_ocpd", """{"size":"14","current_carrying":0}""", "$.current_carrying", "a whole number from 1")]
    [InlineData("ampacity_ocpd", """{"size":"14","current_carrying":2.5}""", "$.current_carrying", "a whole number")]
    [InlineData("ampacity_ocpd", """{"size":"14","insulation_c":80}""", "$.size", "insulation (60, 75 or 90)")]
    [InlineData("ampacity_ocpd", """{"size":"14","ambient_c":90,"insulation_c":60}""", "$.ambient_c", "may be used")]
    [InlineData("ampacity_ocpd", """{"find":"nm_b","sizes":["18"]}""", "$.sizes", "a size of NM-B cable")]
    [InlineData("ampacity_ocpd", """{"cables":[]}""", "$.cables", "cables such as 12/2 NM-B")]
    [InlineData("ampacity_ocpd", """{"cables":["1/0"]}""", "$.cables", "of 1 to 100 conductors")]
    [InlineData("voltage_drop", """{"size":"18","amperes":1,"one_way_ft":1}""", "$.size", "one of 14, 12")]
    [InlineData("voltage_drop", """{"size":"12","amperes":1,"one_way_ft":1,"volts":0}""", "$.volts", "a number from 1 to 1000")]
    [InlineData("voltage_drop", """{"size":"12","amperes":1,"one_way_ft":1,"phases":2}""", "$.phases", "1 or 3")]
    [InlineData("receptacle_count", """{"room_ft":[10,10],"openings_ft":[50]}""", "$.openings_ft", "openings to 40 ft")]
    [InlineData("support_count", """{"run_ft":1,"first_from_box_in":[12,12]}""", "$.first_from_box_in", "within the run's 12 in")]
    [InlineData("nail_plate", """{"member_depth_in":3.5,"hole_in":4}""", "$.hole_in", "a hole smaller than the member's 3.5 in")]
    [InlineData("nail_plate", """{"member_depth_in":3.5,"hole_in":0.5,"offset_in":2}""", "$.offset_in", "an offset to 1.5 in")]
    [InlineData("markup_margin", """{"cost":100,"margin_percent":100}""", "$.margin_percent", "a number from 0 to 99.99")]
    [InlineData("load_standard", """{"lighting_volts":-120}""", "$.lighting_volts", "a number from 1 to 1000")]
    [InlineData("load_standard", """{"cooking_va":[12000,-1]}""", "$.cooking_va[1]", "a number from 0")]
    [InlineData("box_fill", """{"yokes":[{"size":"12","gangs":0}]}""", "$.yokes[0].gangs", "a whole number from 1 to 10")]
    [InlineData("box_fill", """{"yokes":[{"size":"12","gang":1}]}""", "$.yokes[0].gang", "size, gangs")]
    [InlineData("box_fill", """{"conductors":{"12":-1}}""", "$.conductors.12", "a whole number from 0")]
    [InlineData("service_size", """{"find":"service_conductors","rating_a":100000}""", "$.rating_a", "a rating to 400 A")]
    [InlineData("nail_plate", """{"member_depth_in":3.5,"hole_in":"\ud800"}""", "$.hole_in", "text in Unicode")]
    [InlineData("ampacity_ocpd", """{"size":"14","cables":["12/2","\udc00"]}""", "$.cables[1]", "text in Unicode")]
    public void Calc_WrongValue_SaysWhereAndWhatIsAccepted(string topic, string input, string path, string accepted)
    {
        var (code, _, message) = Calc(topic, input);
        Assert.Equal(2, code);
        Assert.Contains($"standard input: {path}: found", message, StringComparison.Ordinal);
        Assert.Contains(accepted, message, StringComparison.Ordinal);
    }

    // 25 A in the 90 C column of table 310.16 for 14 AWG copper, 35% for more than 40 conductors: less than the 15 A of 240.6(A).
    [Fact]
    public void Calc_ConductorBelowTheSmallestBreaker_NamesNone()
    {
        var answer = Answer("ampacity_ocpd", """{"size":"14","insulation_c":90,"current_carrying":50}""");
        Assert.Equal(8.75m, answer["amperes"]!.GetValue<decimal>());
        Assert.Null(answer["max_breaker_a"]);
    }

    [Fact]
    public void Calc_LoadBeyondTheTables_NamesNoServiceAndSaysSo()
    {
        var answer = Answer("load_standard", """{"area_sqft":2000,"fastened_va":[200000]}""");
        Assert.Null(answer["service_a"]);
        Assert.Null(answer["service_copper"]);
        Assert.Contains("400 A", answer["note"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("receptacle_count", "counters_in")]
    [InlineData("ampacity_ocpd", "cables")]
    public void Calc_NullField_IsAsGoodAsLeftOut(string topic, string field)
    {
        var input = topic == "ampacity_ocpd" ? new JsonObject { ["size"] = "12" } : new JsonObject { ["wall_spaces_ft"] = 12 };
        var without = Answer(topic, input.ToJsonString());
        input[field] = null;
        Assert.Equal(without.ToJsonString(), Answer(topic, input.ToJsonString()).ToJsonString());
    }

    private static JsonObject Answer(string topic, string input)
    {
        var (code, output, message) = Calc(topic, input);
        Assert.True(code == 0, message);
        return JsonNode.Parse(output)!.AsObject();
    }

    private static (int Code, string Output, string Message) Calc(string topic, string input)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = Verbs.Run(["calc", topic], new StringReader(input), output, error);
        return (code, output.ToString(), error.ToString());
    }
}
