namespace Estimator.Data.Jobs;

/// <summary>Which jobs a list shows.</summary>
public sealed record JobFilter
{
    /// <summary>Jobs that are not archived, in every state.</summary>
    public static JobFilter All { get; } = new();

    /// <summary>Text that the name, notes, origin or id holds, in any case; empty for all.</summary>
    public string Text { get; init; } = "";

    /// <summary>The state; null for every state.</summary>
    public JobState? State { get; init; }

    /// <summary>Whether the archive is listed instead of the working jobs.</summary>
    public bool Archived { get; init; }
}
