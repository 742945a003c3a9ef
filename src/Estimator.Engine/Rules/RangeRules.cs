using System.Collections.Immutable;
using Estimator.Engine.House;

namespace Estimator.Engine.Rules;

/// <summary>How the range of a price is drawn, and what moves it.</summary>
/// <remarks>Source: common practice, no source, each width; the method is named where it is carried out.</remarks>
public static class RangeRules
{
    private const string Other = "other_material";
    private const string OtherCost = "other_cost";

    /// <summary>How many draws.</summary>
    public static RuleRow Draws => Rules["draws"];

    /// <summary>The percentile of the low end.</summary>
    public static RuleRow LowPercentile => Rules["low_percentile"];

    /// <summary>The percentile of the middle.</summary>
    public static RuleRow MiddlePercentile => Rules["middle_percentile"];

    /// <summary>The percentile of the high end.</summary>
    public static RuleRow HighPercentile => Rules["high_percentile"];

    /// <summary>The most columns of the histogram.</summary>
    public static RuleRow Bins => Rules["bins"];

    /// <summary>The parts of the cost, each with how far it may be off by itself.</summary>
    public static ImmutableArray<RuleRow> Parts => RuleTables.Of("range_parts").Rows;

    /// <summary>What moves several parts at once on any job.</summary>
    public static ImmutableArray<RuleRow> Always => [Factors["crew"], Factors["copper"], Factors["price_level"], Factors["ways"]];

    /// <summary>What finished walls hide.</summary>
    public static RuleRow OldWork => Factors["old_work"];

    /// <summary>Rooms that were arranged from their sizes.</summary>
    public static RuleRow RoomsArranged => Factors["rooms_arranged"];

    /// <summary>A panel that is there without its make.</summary>
    public static RuleRow MakeNotStated => Factors["make_not_stated"];

    private static RuleTable Rules => RuleTables.Of("range_rules");

    private static RuleTable Factors => RuleTables.Of("range_factors");

    /// <summary>What a thing that nobody knows yet moves.</summary>
    public static RuleRow For(UnknownTopic topic) => Factors[$"unknown_{Words.Snake(topic)}"];

    /// <summary>The part of the cost that items of a category belong to.</summary>
    public static string PartOf(string category) => Parts.FirstOrDefault(p => p.Has("categories") && p.Text("categories").Split(' ').Contains(category))?.Key ?? Other;

    /// <summary>The part of the cost that hours of a phase belong to.</summary>
    /// <param name="phase">The phase as files write it, such as <c>rough_in</c>.</param>
    public static string PartOfPhase(string phase) => $"labor_{phase}";

    /// <summary>The part of the cost that another line of direct cost belongs to.</summary>
    /// <param name="line">The line's id, such as <c>permit</c> or <c>allowance-U1</c>.</param>
    public static string PartOfLine(string line) => Parts.FirstOrDefault(p => line.Replace('-', '_').StartsWith(p.Key, StringComparison.Ordinal))?.Key ?? OtherCost;

    /// <summary>The parts that a factor acts on.</summary>
    public static ImmutableArray<string> PartsOf(RuleRow factor) => [.. factor.Text("on").Split(' ')];
}
