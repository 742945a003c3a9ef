using System.Collections.Immutable;
using Estimator.Engine.Explanations;

namespace Estimator.Engine.Findings;

/// <summary>Something that a reader of the job must know: a rule not met, an assumption, a rule not judged.</summary>
public sealed record Finding
{
    /// <summary>Stable code of the check, such as <c>receptacle-spacing</c>.</summary>
    public required string Code { get; init; }

    /// <summary>How much it weighs.</summary>
    public required Severity Severity { get; init; }

    /// <summary>Where: room, device, circuit, box or panel ids.</summary>
    public ImmutableArray<string> Where { get; init; } = [];

    /// <summary>What is, what is asked, and what to do, in plain words with the numbers.</summary>
    public required string Text { get; init; }

    /// <summary>Article, such as <c>210.52(A)(1)</c>; empty where no rule stands behind it.</summary>
    public string Article { get; init; } = "";

    /// <summary>Edition of the code that was applied; empty where none was.</summary>
    public string Edition { get; init; } = "";

    /// <summary>Whether the rule's text for that edition was seen; false prints "not verified".</summary>
    public bool Verified { get; init; } = true;

    /// <summary>The figures behind it.</summary>
    public ImmutableArray<NodeRef> Figures { get; init; } = [];
}
