namespace Estimator.Engine.Edits;

/// <summary>How two edits stand in one another's way.</summary>
public enum ConflictKind
{
    /// <summary>Both gave a field a value, and not the same.</summary>
    Field = 1,

    /// <summary>One removed what the other changed.</summary>
    Removed,

    /// <summary>Both added an item of the same id, and not the same item or not in the same place.</summary>
    Added,

    /// <summary>One added an item beside items that the other moved or removed, so that its place is no longer known.</summary>
    Place,
}
