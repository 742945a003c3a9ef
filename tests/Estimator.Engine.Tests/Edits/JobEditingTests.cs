using CsCheck;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Engine.Tests.Edits;

public sealed class JobEditingTests
{
    private static Job Small { get; } = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 4));

    [Fact]
    public void Between_TwoJobs_LeadsFromOneToTheOtherAndBack() => Gen.Select(EditedJobs.Houses, EditedJobs.Houses).Sample(
        (a, b) => ThereAndBack(HouseGen.Number(a), HouseGen.Number(b)), iter: EditedJobs.Runs);

    [Fact]
    public void Between_JobAndActsOnIt_LeadsThereAndBack() => EditedJobs.Acts.Sample(
        (house, acts) => ThereAndBack(EditedJobs.Base(house, acts), JobActs.After(EditedJobs.Base(house, acts), acts + 1, 5, "mine")), iter: EditedJobs.Runs);

    [Fact]
    public void Between_SameJob_HasNoChanges() => Assert.Empty(JobEditing.Between(Small, Small with { }, "e", "nothing").Changes);

    // An edit that its log could not give back would shut the job for ever.
    [Theory]
    [InlineData(10_000, true)]
    [InlineData(10_001, false)]
    public void Apply_ALongTitle_TakesWhatTheLogCanRead(int length, bool taken)
    {
        var edit = JobEditing.Between(Small, Small with { Name = "other" }, "e", new string('x', length));
        Assert.Equal(taken, JobEditing.Apply(Small, edit).Problems.IsEmpty);
        Assert.Equal(taken, EditJson.Read(EditJson.Write(edit)).Ok);
    }

    [Fact]
    public void Between_OneItemDragged_MovesThatOneOnly()
    {
        var job = Small with { Unknowns = [.. "abcdef".Select(c => new Unknown { Id = $"{c}", Topic = UnknownTopic.Other })] };
        var edit = JobEditing.Between(job, job with { Unknowns = [.. job.Unknowns[1..], job.Unknowns[0]] }, "e", "drag");
        Assert.Equal(["a", "a"], edit.Changes.Select(c => c is AddItem add ? add.Id : ((RemoveItem)c).Id));
    }

    [Fact]
    public void Between_CountTwiceInARoom_SetsTheListAsAWhole()
    {
        var twice = Small.With(r => r with { Counts = [.. r.Counts, .. r.Counts] });
        Assert.Equal("counts", Assert.IsType<SetField>(Assert.Single(JobEditing.Between(Small, twice, "e", "twice").Changes)).Field);
        ThereAndBack(Small, twice);
    }

    [Theory]
    [InlineData("levels/L1/rooms/R9", "name", null, "\"x\"", "$.levels[0].rooms", "'R9'", "R1")]
    [InlineData("levels/L1/rooms/R1", "colour", null, "\"x\"", "$.levels[0].rooms[0]", "the field 'colour'", "ceiling_height")]
    [InlineData("levels/L1/rooms/R1", "ceiling_height", null, "9", "$.levels[0].rooms[0].ceiling_height", "9", "text with a unit")]
    [InlineData("levels/L1/rooms/R1", "ceiling_height", null, "\"9 volts\"", "$.levels[0].rooms[0].ceiling_height", "9 volts", "text with a unit")]
    [InlineData("levels/L1/rooms/R1", "ceiling_height", null, "\"90 ft\"", "$.levels[0].rooms[0].ceiling_height", "90' 0\"", "1' 0\" to 40' 0\"")]
    [InlineData("levels/L1/rooms/R1", "finished", "true", "\"yes\"", "$.levels[0].rooms[0].finished", "\"yes\"", "true or false")]
    [InlineData("levels/L1/rooms/R1", "kind", "\"bedroom\"", null, "$.levels[0].rooms[0].kind", "nothing", "value")]
    [InlineData("levels/L1/rooms/R1", "id", "\"R1\"", "\"R2\"", "$.levels[0].rooms[0].id", "new name", "remove the item")]
    [InlineData("levels/L1/rooms/R1", "name", "\"Den\"", "\"x\"", "$.levels[0].rooms[0].name", "\"Room\"", "\"Den\"")]
    [InlineData("levels/L1/rooms/R1/counts/duplex_receptacle-room", "count", "4", "201", "$.levels[0].rooms[0].counts[0].count", "201", "0 to 200")]
    [InlineData("levels/L1/rooms", "name", null, "\"x\"", "$.levels[0].rooms['name']", "a field of a list", "an item")]
    [InlineData("name/x", "y", null, "1", "$.name", "inside a value", "as a whole")]
    [InlineData("catalogue_snapshot/x", "y", null, "1", "$.catalogue_snapshot", "inside a value", "the key as field")]
    [InlineData("", "practice", "{}", "{}", "$.practice", "section", "one by one")]
    [InlineData("", "schema", "\"estimator-job/1\"", "\"other\"", "$.schema", "'other'", "estimator-job/1")]
    [InlineData("", "notes", null, "{oops", "$.notes", "an object", "text in quotes")]
    [InlineData("code", "permit_date", null, "\"May\"", "$.code.permit_date", "May", "a date such as")]
    [InlineData("", "proposals", "[]", "[null]", "$.proposals[0]", "null", "leave the null out")]
    [InlineData("levels/L1/rooms/R1", "fixtures", "[]", "[null]", "$.levels[0].rooms[0].fixtures[0]", "null", "leave the null out")]
    [InlineData("", "notes", null, "\"\\ud800\"", "$.notes", "text with a broken character", "text in Unicode")]
    public void Apply_BadField_SaysWhatWhereAndWhatIsAccepted(string target, string field, string? before, string? after, string path, string found, string accepted) =>
        Refused(new SetField(Target.Parse(target).Value, field, before, after), path, found, accepted);

    [Theory]
    [InlineData("levels/L1/rooms", "R2", "R1", null, """{"id":"R3","kind":"hall"}""", "$.levels[0].rooms['R2']", "'R3'", "'R2'")]
    [InlineData("levels/L1/rooms", "R2", "R1", null, """{"id":"R2","kind":"hal"}""", "$.levels[0].rooms['R2'].kind", "hal", "hall")]
    [InlineData("levels/L1/rooms", "R2", "R8", "R9", """{"id":"R2","kind":"hall"}""", "$.levels[0].rooms", "'R8' and 'R9'", "R1")]
    [InlineData("levels/L1/rooms", "R1", null, null, """{"id":"R1","kind":"hall"}""", "$.levels[0].rooms['R1']", "second time", "nothing else")]
    [InlineData("practice", "R1", null, null, "{}", "$.practice", "added or removed", "a list")]
    [InlineData("equipment", "E1", null, null, """{"id":"E1","kind":"range","room":"R9"}""", "$.equipment[0].room", "'R9'", "R1")]
    public void Apply_BadItem_SaysWhatWhereAndWhatIsAccepted(string target, string id, string? follows, string? precedes, string content, string path, string found, string accepted) =>
        Refused(new AddItem(Target.Parse(target).Value, id, follows, precedes, content), path, found, accepted);

    [Fact]
    public void Apply_RemovalOfWhatChangedSince_IsRefused()
    {
        var edit = JobEditing.Between(Small with { Equipment = [new Equipment { Id = "E1", Kind = EquipmentKind.Range, Room = "R1" }] }, Small, "e", "gone");
        var changed = Small with { Equipment = [new Equipment { Id = "E1", Kind = EquipmentKind.Range, Room = "R1", Name = "Mine" }] };
        Assert.Contains("changed since", Assert.Single(JobEditing.Apply(changed, edit).Problems).Found, StringComparison.Ordinal);
        EditedJobs.Same(Small, EditedJobs.Applied(Small, edit));
    }

    [Fact]
    public void Apply_ValueInAnotherUnit_IsReadAndTurnsRound()
    {
        var edit = new JobEdit("e", "height", [new SetField(Target.At("levels", "L1", "rooms", "R1"), "ceiling_height", null, "\"2.7432 m\"")]);
        var after = EditedJobs.Applied(Small, edit);
        Assert.Contains("\"9' 0\\\"\"", JobFile.Write(after), StringComparison.Ordinal);
        EditedJobs.Same(Small, EditedJobs.Applied(after, JobEditing.Inverse(edit)));
    }

    private static void Refused(JobChange change, string path, string found, string accepted)
    {
        var before = JobFile.Write(Small);
        var name = new SetField(Target.Job, "name", "\"Small job\"", "\"Half done\"");
        var problem = JobEditing.Apply(Small, new JobEdit("e", "bad", [name, change])).Problems[0];
        Assert.Equal(path, problem.Path);
        Assert.Contains(found, problem.Found, StringComparison.Ordinal);
        Assert.Contains(accepted, problem.Accepted, StringComparison.Ordinal);
        Assert.Equal(before, JobFile.Write(Small));
    }

    private static void ThereAndBack(Job a, Job b)
    {
        var edit = JobEditing.Between(a, b, "e", "from a to b");
        var after = EditedJobs.Applied(a, edit);
        EditedJobs.Same(b, after);
        EditedJobs.Same(a, EditedJobs.Applied(after, JobEditing.Inverse(edit)));
        Assert.Equal(edit, EditJson.Read(EditJson.Write(edit)).Value);
    }
}
