using System.Collections.Immutable;
using CsCheck;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Edits;

public sealed class EditConflictsTests
{
    private static Job Small { get; } = SmallJobs.OneRoom(RoomKind.Bedroom) with { Unknowns = Named("abcd") };

    [Fact]
    public void Between_EditsWithoutConflict_MergeAlikeInEitherOrder()
    {
        var (merged, conflicting) = (0, 0);
        EditedJobs.Acts.Sample(
            (house, acts) =>
            {
                var job = EditedJobs.Base(house, acts);
                var (mine, theirs) = (EditedJobs.Edit(job, acts + 1, "mine"), EditedJobs.Edit(job, acts + 2, "theirs"));
                if (!EditConflicts.Between(mine, theirs).IsEmpty)
                {
                    Interlocked.Increment(ref conflicting);
                    return;
                }

                EditedJobs.Same(EditedJobs.Applied(EditedJobs.Applied(job, mine), theirs), EditedJobs.Applied(EditedJobs.Applied(job, theirs), mine));
                Interlocked.Increment(ref merged);
            },
            iter: 4 * EditedJobs.Runs);
        Assert.True(merged > EditedJobs.Runs && conflicting > 10, $"{merged} merged, {conflicting} in conflict");
    }

    // Every order of four ids with up to two strangers in it, by each of two people: small enough to see them often, large enough to hold every case of neighbours.
    [Fact]
    public void Between_ListsReorderedByTwo_MergeAlikeOrConflict()
    {
        var merged = 0;
        Gen.Select(Reorderings("xp"), Reorderings("ym")).Sample(
            (mine, theirs) =>
            {
                if (EditConflicts.Between(mine, theirs).IsEmpty)
                {
                    EditedJobs.Same(EditedJobs.Applied(EditedJobs.Applied(Small, mine), theirs), EditedJobs.Applied(EditedJobs.Applied(Small, theirs), mine));
                    Interlocked.Increment(ref merged);
                }
            },
            iter: 2000);
        Assert.True(merged > 100, $"{merged} merged");
    }

    [Fact]
    public void Between_FieldSetDifferently_NamesTargetFieldAndBothValues() => Assert.Equal(
        new EditConflict(ConflictKind.Field, Target.At("levels", "L1", "rooms", "R1"), "name", "\"Den\"", "\"Study\""),
        Assert.Single(EditConflicts.Between(Rename("Den"), Rename("Study"))));

    [Fact]
    public void Between_FieldSetAlike_IsNoConflict()
    {
        Assert.Empty(EditConflicts.Between(Rename("Den"), Rename("Den")));
        EditedJobs.Same(EditedJobs.Applied(Small, Rename("Den")), EditedJobs.Applied(EditedJobs.Applied(Small, Rename("Den")), Rename("Den")));
    }

    [Fact]
    public void Between_FieldSetAndSetBack_IsNoConflict()
    {
        var there = EditedJobs.Applied(Small, Rename("Study"));
        Assert.Empty(EditConflicts.Between(Rename("Den"), Rename("Study"), JobEditing.Between(there, Small, "b", "back")));
    }

    [Fact]
    public void Between_OneRemovedWhatTheOtherChanged_IsAConflictOfThatItem()
    {
        var changed = Renamed([.. Small.Unknowns.Select(u => u.Id == "b" ? u with { Text = "look" } : u)]);
        var removed = Renamed([.. Small.Unknowns.Where(u => u.Id != "b")]);
        Assert.Equal(new EditConflict(ConflictKind.Removed, Target.At("unknowns", "b"), "text", "\"look\"", null), Assert.Single(EditConflicts.Between(changed, removed)));
        Assert.Equal(new EditConflict(ConflictKind.Removed, Target.At("unknowns", "b"), "text", null, "\"look\""), Assert.Single(EditConflicts.Between(removed, changed)));
    }

    [Fact]
    public void Between_BothAddedTheSameId_IsAConflict()
    {
        var (mine, theirs) = (Renamed([.. Small.Unknowns, .. Named("e")]), Renamed([.. Small.Unknowns, Named("e")[0] with { Text = "other" }]));
        Assert.Equal(ConflictKind.Added, Assert.Single(EditConflicts.Between(mine, theirs)).Kind);
    }

    [Fact]
    public void Between_AddedAtTheEndWhereTheLastWentAway_Merges()
    {
        var (mine, theirs) = (Renamed(Named("abcde")), Renamed(Named("abc")));
        Assert.Empty(EditConflicts.Between(mine, theirs));
        Assert.Equal("abce", string.Concat(EditedJobs.Applied(EditedJobs.Applied(Small, theirs), mine).Unknowns.Select(u => u.Id)));
    }

    [Fact]
    public void Between_AddedBetweenTwoThatWent_IsAConflictOfPlace()
    {
        var conflict = Assert.Single(EditConflicts.Between(Renamed(Named("abecd")), Renamed(Named("ad"))));
        Assert.Equal((ConflictKind.Place, Target.At("unknowns"), "e"), (conflict.Kind, conflict.Target, conflict.Field));
    }

    private static ImmutableArray<Unknown> Named(IEnumerable<char> ids) => [.. ids.Select(c => new Unknown { Id = $"{c}", Topic = UnknownTopic.Other })];

    // Half of them leave the four in their order, as people mostly do.
    private static Gen<JobEdit> Reorderings(string own) => Gen.Select(Gen.Shuffle($"abcd{own}".ToCharArray(), 2, 6), Gen.Bool).Select((ids, keep) =>
    {
        var kept = new Queue<char>(ids.Where(c => !own.Contains(c, StringComparison.Ordinal)).Order());
        return Renamed(Named(keep ? ids.Select(c => own.Contains(c, StringComparison.Ordinal) ? c : kept.Dequeue()) : ids));
    });

    private static JobEdit Renamed(ImmutableArray<Unknown> unknowns) => JobEditing.Between(Small, Small with { Unknowns = unknowns }, "e", "unknowns");

    private static JobEdit Rename(string name) => JobEditing.Between(Small, Small.With(r => r with { Name = name }), name, $"Room: {name}");
}
