using System.Collections.Immutable;

namespace Estimator.Documents.Budget;

/// <summary>What an owner asks each firm, so that their prices can be compared.</summary>
/// <remarks>Source: common practice, no source.</remarks>
internal static class FirmQuestions
{
    /// <summary>The questions.</summary>
    internal static ImmutableArray<string> All { get; } =
    [
        "Is the permit in your price, and who meets the inspector?",
        "What is left out: patching, painting, fixtures, work on the panel?",
        "What do you assume about what nobody has seen yet, and what will it cost if you are wrong?",
        "What do you charge for one receptacle more or less, once you are here?",
        "When is what paid, and how long does your price stand?",
    ];
}
