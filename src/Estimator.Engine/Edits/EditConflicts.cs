using System.Collections.Immutable;

namespace Estimator.Engine.Edits;

/// <summary>Finds what stands in the way when two people edited the same job.</summary>
public static class EditConflicts
{
    /// <summary>What my edit and theirs, both made on the same job, want differently; empty where they merge, and then in either order to the same job.</summary>
    /// <remarks>
    /// Merged edits are made by <see cref="JobEditing.Apply"/> one after the other, and that checks the whole job: a room that one removed and another put equipment in
    /// is found there.
    /// </remarks>
    /// <param name="mine">The edit to be appended.</param>
    /// <param name="theirs">The edits in the log since the version that mine was made on, in their order.</param>
    public static ImmutableArray<EditConflict> Between(JobEdit mine, params ReadOnlySpan<JobEdit> theirs)
    {
        var (my, their) = (Touches.Of(mine.Changes), Touches.Of([.. theirs.ToArray().SelectMany(e => e.Changes)]));
        var conflicts = my.Changes.SelectMany(c => their.Meeting(c.Touched).Select(other => Pair(c, other)))
            .Concat(their.Changes.SelectMany(c => my.Above(c.Touched).Select(other => Pair(other, c)))).OfType<EditConflict>();
        var places = my.Added.Where(their.TakesPlaceOf).Select(a => new EditConflict(ConflictKind.Place, a.Target, a.Id, a.Content, null))
            .Concat(their.Added.Where(my.TakesPlaceOf).Select(a => new EditConflict(ConflictKind.Place, a.Target, a.Id, null, a.Content)));
        return [.. conflicts.Concat(places).Distinct()];
    }

    private static EditConflict? Pair(JobChange mine, JobChange theirs)
    {
        if (mine == theirs || (mine is RemoveItem && theirs is RemoveItem && mine.Touched == theirs.Touched)
            || (mine is SetField { After: var my } && theirs is SetField { After: var their } && mine.Touched == theirs.Touched && my == their))
        {
            return null;
        }

        var kind = mine is RemoveItem || theirs is RemoveItem ? ConflictKind.Removed : mine is AddItem || theirs is AddItem ? ConflictKind.Added : ConflictKind.Field;
        // The smaller of the two things is what the people see: the field that one set in the room that the other removed.
        var named = mine.Touched.Text.Length >= theirs.Touched.Text.Length ? mine : theirs;
        return new EditConflict(kind, named.Target, Name(named), Wanted(mine), Wanted(theirs));
    }

    private static string Name(JobChange change) => change switch
    {
        SetField set => set.Field,
        AddItem add => add.Id,
        RemoveItem remove => remove.Id,
        _ => throw new ArgumentOutOfRangeException(nameof(change)),
    };

    private static string? Wanted(JobChange change) => change switch
    {
        SetField set => set.After,
        AddItem add => add.Content,
        RemoveItem => null,
        _ => throw new ArgumentOutOfRangeException(nameof(change)),
    };
}
