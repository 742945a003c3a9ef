using Estimator.Documents.Labor;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Learning;
using Estimator.Web.Figures;
using Estimator.Web.Takeoff;

namespace Estimator.Web.Learned;

/// <summary>Plain words for what jobs propose.</summary>
public static class LearnedWords
{
    private const string Cable = "cable";

    /// <summary>What a proposal is of.</summary>
    public static string Of(Proposal proposal) => proposal.Kind is LearnedKind.Hours
        ? $"Hours of {PhaseWords.Of(Phase(proposal.Key)).ToLower(American.Culture)}"
        : $"{ItemCategory.Words(proposal.Key)} beyond the takeoff";

    /// <summary>A factor as people say it: times the table, or percent more than the takeoff.</summary>
    public static string Factor(LearnedKind kind, decimal factor) => kind is LearnedKind.Hours
        ? $"{American.Fixed(factor, 2)} times the table"
        : $"{American.Fixed((factor - 1) * 100, 1)} % more";

    /// <summary>The interval in the same words.</summary>
    public static string Interval(Proposal p) => p.Kind is LearnedKind.Hours
        ? $"{American.Fixed(p.Pooled.Low, 2)} to {American.Fixed(p.Pooled.High, 2)}"
        : $"{American.Fixed((p.Pooled.Low - 1) * 100, 1)} to {American.Fixed((p.Pooled.High - 1) * 100, 1)} %";

    /// <summary>What later estimates do with it once it is accepted; null where there is nothing to do.</summary>
    public static string? Use(Proposal proposal) => proposal switch
    {
        { Kind: LearnedKind.Hours } => "all units of the phase",
        { Key: Cable } => "new jobs cut each piece so much longer",
        _ => null,
    };

    private static WorkPhase Phase(string key) => Enum.GetValues<WorkPhase>().Single(p => System.Text.Json.JsonNamingPolicy.SnakeCaseLower.ConvertName(p.ToString()) == key);
}
