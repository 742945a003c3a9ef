namespace Estimator.Engine.Findings;

/// <summary>How much a finding weighs.</summary>
public enum Severity
{
    /// <summary>The code, a listing or a rating is not met.</summary>
    Mandatory = 1,

    /// <summary>Allowed, but worth a change or a decision.</summary>
    Advice,

    /// <summary>A rule that this program could not judge here, and who must.</summary>
    Unjudged,

    /// <summary>Something that was assumed.</summary>
    Note,
}
