using Estimator.Engine.House;
using Estimator.Engine.Rules;
using Estimator.Web.Entries;

namespace Estimator.Web.Site;

/// <summary>Local rules: what can be stated so that the checks follow it, and how a new one starts.</summary>
public static class LocalRules
{
    private const string GroundFault = "ground-fault-protection";
    private const string Spacing = "receptacle-spacing";

    /// <summary>Rules whose figure the checks take from a local rule, with the figure's unit and the edition's own.</summary>
    public static IReadOnlyList<(string Code, string Words, string Unit, RuleRow Edition)> Figures { get; } =
    [
        (Spacing, "distance between wall receptacles", "in", ReceptacleRules.WallBetween),
        ("required-circuits", "small-appliance circuits", "circuits", RuleTable.Load("wiring_settings")["small_appliance_circuits"]),
    ];

    /// <summary>Rules that the checks drop where a local rule waives them.</summary>
    public static IReadOnlyList<(string Code, string Words)> Waivers { get; } = [(GroundFault, "ground-fault protection"), ("arc-fault-protection", "arc-fault protection")];

    /// <summary>The rules to choose from for what a local rule does; empty where it is named freely.</summary>
    public static IReadOnlyList<Option> Options(Amendment amendment)
    {
        IEnumerable<(string Code, string Words)> known = amendment.Kind switch
        {
            AmendmentKind.Replace or AmendmentKind.Raise => Figures.Select(f => (f.Code, f.Words)),
            AmendmentKind.Relax when amendment.Value is null => Waivers,
            AmendmentKind.Relax => Figures.Select(f => (f.Code, f.Words)),
            _ => [],
        };
        var options = known.Select(k => new Option(k.Code, k.Words)).ToList();
        return options.Count == 0 || options.Any(o => o.Value == amendment.Rule) ? options : [.. options, new Option(amendment.Rule, amendment.Rule)];
    }

    /// <summary>A new local rule of a kind.</summary>
    public static Amendment New(AmendmentKind kind) => new()
    {
        Id = Guid.NewGuid().ToString("N")[..8],
        Kind = kind,
        Rule = kind switch
        {
            AmendmentKind.Relax => GroundFault,
            AmendmentKind.Add => "local rule",
            AmendmentKind.WiringMethod => "wiring-method",
            _ => Spacing,
        },
        Value = kind is AmendmentKind.Replace ? ReceptacleRules.WallBetween.Number() : null,
        WiringMethod = kind is AmendmentKind.WiringMethod ? Engine.House.WiringMethod.Mc : null,
    };
}
