using CsCheck;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Engine.Tests.Edits;

public sealed class EditJsonTests
{
    public static TheoryData<int> Texts() => [.. Enumerable.Range(0, JobActs.Texts.Length)];

    [Fact]
    public void Write_AnEdit_IsReadAsItself() => EditedJobs.Acts.Sample(
        (house, acts) => EditedJobs.Edit(EditedJobs.Base(house, acts), acts + 1, "mine") is var edit && EditJson.Read(EditJson.Write(edit)).Value.Equals(edit), iter: EditedJobs.Runs);

    [Theory]
    [MemberData(nameof(Texts))]
    public void Text_OfAUser_PassesThroughAsItIs(int number)
    {
        var text = JobActs.Texts[number];
        var job = SmallJobs.OneRoom(RoomKind.Bedroom);
        var named = job.With(r => r with { Name = text }) with { Unknowns = [new Unknown { Id = $"id {text[..Math.Min(text.Length, 40)]}", Topic = UnknownTopic.Other, Text = text }] };
        var edit = EditJson.Read(EditJson.Write(JobEditing.Between(job, named, "e", text))).Value;
        var after = EditedJobs.Applied(job, edit);
        Assert.Equal((text, text, text), (edit.Title, after.Levels[0].Rooms[0].Name, after.Unknowns[0].Text));
        var cleared = after with { Unknowns = [after.Unknowns[0] with { Allowance = Money.FromDollars(5) }] };
        EditedJobs.Same(cleared, EditedJobs.Applied(after, EditJson.Read(EditJson.Write(JobEditing.Between(after, cleared, "f", ""))).Value));
    }

    [Theory]
    [InlineData("", "$")]
    [InlineData("null", "$")]
    [InlineData("[]", "$")]
    [InlineData("""{"id":"e","title":"t"}""", "$")]
    [InlineData("""{"id":null,"title":"t","changes":[]}""", "$.id")]
    [InlineData("""{"id":"e","title":"t","changes":null}""", "$.changes")]
    [InlineData("""{"id":"e","title":"t","changes":[null]}""", "$.changes[0]")]
    [InlineData("""{"id":"e","id":"f","title":"t","changes":[]}""", "$.id")]
    [InlineData("""{"id":"e","title":"t","changes":[],"more":1}""", "$.more")]
    [InlineData("""{"id":"e","title":"t","changes":[{"change":"explode","target":"x"}]}""", "$.changes[0]")]
    [InlineData("""{"id":"e","title":"t","changes":[{"target":"x"}]}""", "$.changes[0]")]
    [InlineData("""{"id":"e","title":"t","changes":[{"change":"set_field","target":"x","field":"y","before":1}]}""", "$.changes[0]")]
    [InlineData("""{"id":"e","title":"t","changes":[{"change":"set_field","target":"a~2","field":"y","before":1,"after":2}]}""", "$.changes[0].target")]
    [InlineData("""{"id":"e","title":"t","changes":[{"change":"add_item","target":"x","id":"y","follows":null,"precedes":null,"content":null}]}""", "$.changes[0].content")]
    public void Read_Malformed_SaysWhere(string json, string path)
    {
        var read = EditJson.Read(json);
        Assert.False(read.Ok);
        Assert.StartsWith($"this edit: {path}", read.Problem, StringComparison.Ordinal);
        Assert.Contains("accepted: ", read.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_SpacedAndTurnedFields_GivesTheSameEdit() => Assert.Equal(
        new JobEdit("e", "t", [new SetField(Target.At("practice"), "box_tail", null, "\"8\\\"\"")]),
        EditJson.Read("""{ "title": "t", "changes": [ { "target": "practice", "field": "box_tail", "after": "8\u0022", "before": null, "change": "set_field" } ], "id": "e" }""").Value);
}
