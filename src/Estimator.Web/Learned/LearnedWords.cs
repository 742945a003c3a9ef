using Estimator.Documents.Labor;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Learning;
using Estimator.Engine.Rules;
using Estimator.Web.Figures;
using Estimator.Web.Takeoff;

namespace Estimator.Web.Learned;

/// <summary>Plain words for what jobs propose.</summary>
public static class LearnedWords
{
    private const string Cable = "cable";

    /// <summary>What a proposal is of.</summary>
    public static string Of(Proposal proposal) => proposal.Kind is LearnedKind.Hours
        ? $"Hours of {PhaseOf(proposal.Key).ToLower(American.Culture)}{(UnitKey.ClassOf(proposal.Key) is null ? "" : $": {ClassOf(proposal.Key).ToLower(American.Culture)}")}"
        : $"{ItemCategory.Words(proposal.Key)} beyond the takeoff";

    /// <summary>The phase of a key of hours.</summary>
    public static string PhaseOf(string key) => PhaseWords.Of(Phase(UnitKey.PhaseOf(key)));

    /// <summary>The class of items of a key of hours; one that the table names no more keeps its own word.</summary>
    public static string ClassOf(string key) => UnitKey.ClassOf(key) is { } word ? LearningRules.Class(word)?.Label ?? word : "";

    /// <summary>What hours are for: each, or so many feet.</summary>
    public static string Per(CatalogueItem? item, decimal per) => item?.Unit == "foot" ? $"{American.Number(per)} ft" : per == 1 ? "each" : American.Number(per);

    /// <summary>In a sentence which classes the jobs do not tell apart; null where they tell all of them.</summary>
    public static string? NotApart(IEnumerable<Proposal> classes) => classes.Where(p => !p.Apart).Select(p => ClassOf(p.Key).ToLower(American.Culture)).ToList() is { Count: > 0 } alike
        ? $"These jobs had nearly the same mix of work in this phase, so they hardly tell what one class took: {string.Join("; ", alike)}. What the whole phase took more or less is shared out, and the intervals stay wide. Jobs of another mix will tell."
        : null;

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
        { Kind: LearnedKind.Hours } => UnitKey.ClassOf(proposal.Key) is null ? "all units of the phase" : "the units of the class",
        { Key: Cable } => "new jobs cut each piece so much longer",
        _ => OwnUnits.Acts(proposal.Key) ? "new jobs buy so many spare" : null,
    };

    private static WorkPhase Phase(string key) => Enum.GetValues<WorkPhase>().Single(p => UnitKey.Of(p) == key);
}
