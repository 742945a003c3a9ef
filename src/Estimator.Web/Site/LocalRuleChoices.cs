using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Rules;
using Estimator.Web.Entries;

namespace Estimator.Web.Site;

/// <summary>Local rules: what can be stated so that the checks follow it, and how a new one starts. What each kind does is said by <see cref="LocalRules"/>.</summary>
public static class LocalRuleChoices
{
    private const string OwnRule = "local rule";

    /// <summary>The kinds of local rule that can be added, with what the page calls each.</summary>
    public static ImmutableArray<(string Words, Amendment Start)> Kinds { get; } =
    [
        ("another figure", Figure(AmendmentKind.Replace)),
        ("a stricter figure", Figure(AmendmentKind.Raise)),
        ("a laxer figure", Figure(AmendmentKind.Relax)),
        ("a waiver", Of(AmendmentKind.Relax, "ground-fault-protection")),
        ("a rule of another edition", Of(AmendmentKind.Add, "surge-protection")),
        ("a rule of the place", Of(AmendmentKind.Add, OwnRule)),
        ("a wiring method", Of(AmendmentKind.WiringMethod, "wiring-method") with { WiringMethod = WiringMethod.Mc }),
    ];

    /// <summary>The rules to choose from for what a local rule does; empty where it is named freely.</summary>
    public static IReadOnlyList<Option> Options(Amendment amendment)
    {
        var known = amendment.Kind switch
        {
            AmendmentKind.Replace or AmendmentKind.Raise => LocalRules.WithFigure,
            AmendmentKind.Relax => amendment.Value is null ? JudgedRules.All : LocalRules.WithFigure,
            AmendmentKind.Add when amendment.Rule == OwnRule || !LocalRules.Judges(amendment) => [],
            AmendmentKind.Add => JudgedRules.All,
            _ => [],
        };
        var options = known.Select(r => new Option(r.Key, $"{r.Label}, {r.Text("article")}")).ToList();
        return options.Count == 0 || options.Any(o => o.Value == amendment.Rule) ? options : [.. options, new Option(amendment.Rule, amendment.Rule)];
    }

    /// <summary>Whether a local rule has a figure to state.</summary>
    public static bool TakesFigure(Amendment amendment) => amendment.Kind is AmendmentKind.Replace or AmendmentKind.Raise || amendment.Value is not null;

    /// <summary>A local rule that turned to another rule: its figure starts from the edition's.</summary>
    public static Amendment Turn(Amendment amendment, string rule) => amendment with { Rule = rule, Value = amendment.Value is null ? null : LocalRules.FigureOf(rule) };

    /// <summary>What a local rule does, before the name of the rule.</summary>
    public static string What(Amendment amendment) => amendment is { Kind: AmendmentKind.Relax, Value: null } ? "waives" : SiteWords.Of(amendment.Kind);

    /// <summary>What the checks make of a local rule, in words.</summary>
    public static string Followed(Amendment amendment) => amendment.Kind is AmendmentKind.WiringMethod ? "the runs follow it"
        : LocalRules.Judges(amendment) ? "the checks follow it"
        : "not judged; the inspector does";

    private static Amendment Figure(AmendmentKind kind) => Of(kind, "receptacle-spacing") with { Value = LocalRules.FigureOf("receptacle-spacing") };

    private static Amendment Of(AmendmentKind kind, string rule) => new() { Id = "", Kind = kind, Rule = rule };
}
