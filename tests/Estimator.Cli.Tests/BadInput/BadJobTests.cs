using System.Text.Json.Nodes;
using CsCheck;

namespace Estimator.Cli.Tests.BadInput;

/// <summary>Wrong input is refused with file, path, what was found and what is accepted; nothing is half-written and nothing crashes.</summary>
public sealed class BadJobTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("bad-input").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("$.levels[0].rooms[0].colour", "\"red\"", "colour")]
    [InlineData("$.levels[0].rooms[0].size.width", "\"12 kg\"", "12' 6")]
    [InlineData("$.levels[0].rooms[0].size.width", "12", "text with a unit")]
    [InlineData("$.levels[0].rooms[0].size.width", "\"-12'\"", "500' 0")]
    [InlineData("$.levels[0].rooms[0].kind", "\"ballroom\"", "living, dining")]
    [InlineData("$.levels[0].rooms[0].counts[0].count", "-1", "0 to 200")]
    [InlineData("$.levels[0].rooms[0].counts[0].count", "1e30", "$.levels[0].rooms[0].counts[0].count")]
    [InlineData("$.levels[0].rooms[0].placed", """[{"id":"x","kind":"dimmer","wall":{"side":9,"offset":"1'"}}]""", "a wall from 1 to 4")]
    [InlineData("$.levels[0].rooms[0].placed", """[{"id":"x","kind":"dimmer","wall":{"side":1,"offset":"99'"}}]""", "the length of that wall")]
    [InlineData("$.panels[0].rating_a", "0", "15 to 600 amperes")]
    [InlineData("$.panels[0].rating_a", "-5", "a number of amperes")]
    [InlineData("$.panels[0].spaces", "0", "1 to 84 spaces")]
    [InlineData("$.panels[0].room", "\"attic\"", "the id of a room")]
    [InlineData("$.levels[0].openings[0]", """{"id":"d1","kind":"door","room":"family","wall":{"side":1,"offset":"5'"},"width":"50'"}""", "the length of its wall")]
    [InlineData("$.levels[0].rooms[1].at", """["1'","1'"]""", "side by side")]
    [InlineData("$.levels[0].rooms[1].id", "\"family\"", "an id that nothing else has")]
    [InlineData("$.panels[0].circuits[1].id", "\"e1\"", "an id that nothing else has")]
    [InlineData("$.unknowns", """[{"id":"u","topic":"wall_type"},{"id":"u","topic":"wall_type"}]""", "an id that nothing else has")]
    [InlineData("$.pins", """{"circuits":[{"id":"c","panel":"P1","outlets":[]},{"id":"c","panel":"P1","outlets":[]}]}""", "an id that nothing else has")]
    [InlineData("$.catalogue_snapshot", """{"items.csv":7}""", "text in quotes")]
    [InlineData("$.levels[0].ceiling_height", "\"99999999999 ft\"", "text with a unit")]
    [InlineData("$.controls", """[{"id":"c","switches":["nobody"],"loads":[]}]""", "the id of a device")]
    [InlineData("$.schema", "\"estimator-job/9\"", "newer program")]
    [InlineData("$.schema", "\"something\"", "estimator-job/1")]
    [InlineData("$.name", "null", "$.name")]
    [InlineData("$.levels[0].rooms", "null", "$.levels[0].rooms")]
    [InlineData("$.practice", """{"box_tail":"-5'"}""", "0' 0\" to 20' 0\"")]
    [InlineData("$.practice", """{"switch_height":"1999'"}""", "0' 0\" to 12' 0\"")]
    [InlineData("$.practice", """{"receptacle_spacing":"0'"}""", "1' 0\" to 50' 0\"")]
    [InlineData("$.practice", """{"outlets_per_20a":0}""", "1 to 200 outlets")]
    [InlineData("$.practice", """{"run_slack_percent":10000}""", "0 to 100 percent")]
    [InlineData("$.practice", """{"branch_voltage_drop_percent":0}""", "0.1 to 100 percent")]
    [InlineData("$.bid", """{"helpers_per_electrician":-1}""", "0 to 20 helpers")]
    [InlineData("$.bid", """{"helpers_per_electrician":79228162514264337593543950335}""", "0 to 20 helpers")]
    [InlineData("$.bid", """{"productive_percent":0.0001}""", "1 to 100 percent")]
    [InlineData("$.bid", """{"profit_basis":"margin","profit_percent":100}""", "0 to 99 percent")]
    [InlineData("$.bid", """{"valid_days":-1}""", "1 to 3650 days")]
    [InlineData("$.code.amendments", """[{"id":"a","kind":"raise","rule":"receptacle-spacing","value":1e20}]""", "0 to 300 in the rule's unit")]
    [InlineData("$.panels[0].measured_demand_va", "10000000", "0 to 200000 volt-amperes")]
    [InlineData("$.panels[0].other_area_sq_ft", "-1", "a number of square feet")]
    [InlineData("$.panels[0].circuits[0].breaker_a", "0", "1 to 600 amperes")]
    [InlineData("$.equipment", """[{"id":"e9","kind":"other","room":"closet","minimum_circuit_ampacity_a":5000}]""", "1 to 600 amperes")]
    [InlineData("$.pins", """{"circuits":[{"id":"c","panel":"P1","outlets":[],"breaker_a":0}]}""", "15 to 600 amperes")]
    [InlineData("$.equipment", """[{"id":"e9","kind":"other","room":"closet","maximum_overcurrent_device_a":12}]""", "15 to 600 amperes")]
    [InlineData("$.equipment", """[{"id":"e9","kind":"other","room":"closet","minimum_circuit_ampacity_a":25,"maximum_overcurrent_device_a":20}]""", "at least minimum_circuit_ampacity_a, 25 A")]
    [InlineData("$.levels", "[null]", "leave the null out")]
    [InlineData("$.levels[0].rooms[1].fixtures", "[null]", "leave the null out")]
    [InlineData("$.panels[0].circuits", "[null]", "leave the null out")]
    [InlineData("$.proposals", "[null]", "leave the null out")]
    [InlineData("$.panels[0].fed_from", "\"P1\"", "the id of another panel")]
    [InlineData("$.panels", """[{"id":"A","room":"mech","rating_a":100,"spaces":20,"fed_from":"B"},{"id":"B","room":"mech","rating_a":100,"spaces":20,"fed_from":"A"}]""", "lead to the service panel")]
    [InlineData("$.controls", """[{"id":"c","switches":["family/recessed_light-1"],"loads":[]}]""", "the id of a switch")]
    [InlineData("$.controls", """[{"id":"c","switches":[],"loads":["family/recessed_light-1"]}]""", "1 to 200 switches")]
    [InlineData("$.controls", """[{"id":"c","switches":["bath/single_pole_switch-1"],"loads":["bath/single_pole_switch-2"]}]""", "a light, a fan or a half-hot receptacle")]
    [InlineData("$.controls", """[{"id":"c","switches":["bath/single_pole_switch-1"],"loads":["family/duplex_receptacle-1"]}]""", "a light, a fan or a half-hot receptacle")]
    [InlineData("$.controls", """[{"id":"c","switches":["bath/single_pole_switch-1"],"loads":["bath/exhaust_fan-1#fan"]}]""", "a ceiling fan before #fan or #light")]
    [InlineData("$.controls", """[{"id":"c","switches":["bath/single_pole_switch-1","bath/single_pole_switch-1"],"loads":[]}]""", "each switch in one control")]
    [InlineData("$.controls", """[{"id":"c","switches":["bath/single_pole_switch-1"],"loads":["bath/exhaust_fan-1","bath/exhaust_fan-1"]}]""", "each load in one control")]
    [InlineData("$.pins", """{"circuits":[{"id":"c","panel":"P1","wire":"13","outlets":[]}]}""", "a wire size")]
    [InlineData("$.pins", """{"circuits":[{"id":"c","panel":"P1","shares_neutral_with":"c","outlets":[]}]}""", "another pinned circuit")]
    [InlineData("$.pins", """{"circuits":[{"id":"c","panel":"P1","outlets":["family/smoke_co_alarm-1","family/smoke_co_alarm-1"]}]}""", "each outlet on one circuit")]
    [InlineData("$.pins", """{"circuits":[{"id":"c","panel":"P1","outlets":[],"runs":[{"from":"nobody","to":"family/duplex_receptacle-1"}]}]}""", "a panel, device or piece of equipment")]
    [InlineData("$.levels[0].rooms[0].placed", """[{"id":"bath/exhaust_fan-1","kind":"dimmer","at":["1'","1'"]}]""", "an id that nothing else has")]
    [InlineData("$.code.amendments", """[{"id":"a","kind":"add","rule":"x"},{"id":"a","kind":"add","rule":"y"}]""", "an id that nothing else has")]
    [InlineData("$.levels[0].framing", """{"stud_depth":"0'"}""", "0' 1\" to 2' 0\"")]
    [InlineData("$.levels[0].rooms[0].placed", """[{"id":"x","kind":"dimmer","wall":{"side":1,"offset":"1'"},"height":"9'"}]""", "0' 0\" to 8' 0\"")]
    public void Takeoff_WrongValue_SaysWhereAndWhatIsAccepted(string path, string value, string accepted)
    {
        var job = Sample();
        JobPaths.Put(job, path, JsonNode.Parse(value));
        var (code, message) = Takeoff(job.ToJsonString());
        Assert.Equal(2, code);
        Assert.Contains("job.json: $", message, StringComparison.Ordinal);
        Assert.Contains(accepted, message, StringComparison.Ordinal);
        Assert.Contains("found", message, StringComparison.Ordinal);
        Assert.Contains("accepted", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Takeoff_CountOfZero_IsAsGoodAsNone()
    {
        var job = Sample();
        JobPaths.Put(job, "$.levels[0].rooms[0].counts[1].count", 0);
        Assert.Equal((0, ""), Takeoff(job.ToJsonString()));
    }

    [Fact]
    public void Takeoff_LevelOfVoidsAlone_IsReached()
    {
        var job = Sample();
        job["levels"]!.AsArray().Add(JsonNode.Parse("""
            {"id":"U","elevation":"9'","rooms":[{"id":"shaft","kind":"void","size":{"width":"9'","depth":"9'"},"at":["0'","0'"],"counts":[{"kind":"duplex_receptacle","count":1}]}]}
            """));
        Assert.Equal((0, ""), Takeoff(job.ToJsonString()));
    }

    [Theory]
    [InlineData("{")]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("""{"schema":"estimator-job/1","schema":"estimator-job/1"}""")]
    [InlineData("""{"schema":"estimator-job/1"}""")]
    public void Takeoff_TextThatIsNoJob_IsRefused(string text)
    {
        var (code, message) = Takeoff(text);
        Assert.Equal(2, code);
        Assert.Contains("job.json: $", message, StringComparison.Ordinal);
    }

    // Half of a pair of surrogates as an escape: well-formed JSON (RFC 8259, section 8.2), and no text.
    [Theory]
    [InlineData("""{"schema":"estimator-job/1","name":"a\ud800b"}""", "$.name")]
    [InlineData("""{"schema":"estimator-job/1","proposals":["x","y\uDFFF"]}""", "$.proposals[1]")]
    [InlineData("""{"schema":"estimator-job/1","levels":[{"rooms":[{"id":"a"},{"id":"b","kind":"\ud83c"}]}]}""", "$.levels[0].rooms[1].kind")]
    [InlineData("""{"schema":"estimator-job/1","bid":{},"na\ud83cme":1}""", "$")]
    public void Takeoff_TextWithHalfACharacter_IsRefused(string text, string path)
    {
        var (code, message) = Takeoff(text);
        Assert.Equal(2, code);
        Assert.Contains($"job.json: {path}: found text with a broken character", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Takeoff_TextWithWholePairs_IsRead()
    {
        var job = Sample();
        job.Remove("notes");
        Assert.Equal((0, ""), Takeoff(job.ToJsonString().Insert(1, "\"notes\":\"\\ud83c\\udfe0\",")));
    }

    [Fact]
    public void Takeoff_TenThousandRooms_IsRefusedAtOnce()
    {
        var job = Sample();
        var rooms = job["levels"]![0]!["rooms"]!.AsArray();
        for (var i = 0; i < 10_000; i++)
        {
            rooms.Add(JsonNode.Parse($$$"""{"id":"r{{{i}}}","kind":"closet","size":{"width":"3'","depth":"3'"}}"""));
        }

        var (code, message) = Takeoff(job.ToJsonString());
        Assert.Equal(2, code);
        Assert.Contains("1 to 400 rooms", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Takeoff_DeepNesting_IsRefused()
    {
        var (code, _) = Takeoff($"{{\"schema\":\"estimator-job/1\",\"levels\":{new string('[', 5000)}{new string(']', 5000)}}}");
        Assert.Equal(2, code);
    }

    [Fact]
    public void Takeoff_MissingFile_IsRefused()
    {
        using var error = new StringWriter();
        Assert.Equal(2, Verbs.Run(["takeoff", Path.Combine(_folder, "nothing.json")], TextReader.Null, TextWriter.Null, error));
        Assert.Contains("no such file", error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Takeoff_AnyMutation_NeverCrashesNorHalfWrites()
    {
        var text = Sample().ToJsonString();
        var pieces = new[] { "", "1e30", "-1", "\"\"", "null", "[]", "{}", "\"12' 6\\\"\"", "\u0001", "}", "\"", "999999999999999999999" };
        Gen.Select(Gen.Int[0, text.Length - 1], Gen.Int[0, 12], Gen.Int[0, pieces.Length - 1]).Sample(
            m =>
            {
                var at = m.Item1;
                var cut = Math.Min(m.Item2, text.Length - at);
                var (code, message) = Takeoff(string.Concat(text.AsSpan(0, at), pieces[m.Item3], text.AsSpan(at + cut)));
                Assert.True(code is 0 or 1 or 2, message);
                Assert.Equal(code != 2, File.Exists(Path.Combine(_folder, "out.json")));
                Assert.Empty(Directory.GetFiles(_folder, "*.part"));
            },
            iter: 250,
            threads: 1);
    }

    private (int Code, string Message) Takeoff(string text)
    {
        var (job, output) = (Path.Combine(_folder, "job.json"), Path.Combine(_folder, "out.json"));
        File.WriteAllText(job, text);
        File.Delete(output);
        using var error = new StringWriter();
        var code = Verbs.Run(["takeoff", job, "--json", output], TextReader.Null, TextWriter.Null, error);
        Assert.True(code != 2 || !File.Exists(output));
        return (code, error.ToString());
    }

    private static JsonObject Sample() => JsonNode.Parse(Samples.Read("basement-finish"))!.AsObject();
}
