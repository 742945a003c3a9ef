namespace Estimator.Engine.Edits;

/// <summary>One thing that two edits want differently.</summary>
/// <param name="Kind">How.</param>
/// <param name="Target">The thing that has the field; the list of the item where <paramref name="Field"/> is an item's id.</param>
/// <param name="Field">The field, or the id of the item.</param>
/// <param name="Mine">What my edit wants, as JSON text of the job file; null for nothing: removed, or without a value.</param>
/// <param name="Theirs">What their edit wants.</param>
public sealed record EditConflict(ConflictKind Kind, Target Target, string Field, string? Mine, string? Theirs)
{
    /// <summary>One sentence.</summary>
    public override string ToString() => $"{Target}: {Field}: mine {ValueText.Shortened(Mine)}; theirs {ValueText.Shortened(Theirs)}";
}
