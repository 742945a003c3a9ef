namespace Estimator.Engine.Changes;

/// <summary>Whether a line of a change comes or goes.</summary>
public enum ChangeKind
{
    /// <summary>It comes.</summary>
    Added = 1,

    /// <summary>It goes.</summary>
    Removed,
}
