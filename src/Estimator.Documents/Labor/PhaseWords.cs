using Estimator.Engine.Catalogue;

namespace Estimator.Documents.Labor;

/// <summary>What the phases are called.</summary>
public static class PhaseWords
{
    /// <summary>The phase in words.</summary>
    public static string Of(WorkPhase phase) => phase switch
    {
        WorkPhase.Layout => "Layout",
        WorkPhase.RoughIn => "Rough-in",
        WorkPhase.Panel => "Panel",
        WorkPhase.TrimOut => "Trim-out",
        WorkPhase.TestAndInspection => "Test and inspection",
        _ => throw new ArgumentOutOfRangeException(nameof(phase), phase, "The phase has no words."),
    };
}
