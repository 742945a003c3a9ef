using System.Collections.Immutable;
using Estimator.Engine.House;

namespace Estimator.Engine.Rules;

/// <summary>What a local amendment does to each judged rule. The only place that says so; what it can't do is listed as unjudged.</summary>
/// <remarks>
/// Raise and relax with a figure: the stricter, or the laxer, of the edition's figure and the stated one. Replace: the stated figure. Relax without one: the
/// rule is dropped. Add: a judged rule holds although the edition does not have it; a rule under any other name is for the inspector. A wiring method is
/// followed by the runs.
/// </remarks>
public static class LocalRules
{
    private const string LessIsStricter = "less";

    /// <summary>Whether the checks, or the runs, follow an amendment.</summary>
    public static bool Follows(Amendment amendment) => amendment.Kind is AmendmentKind.WiringMethod || Judges(amendment);

    /// <summary>Whether a check follows an amendment.</summary>
    public static bool Judges(Amendment amendment) => amendment.Kind switch
    {
        AmendmentKind.Raise or AmendmentKind.Replace => amendment.Value is not null && TakesFigure(amendment.Rule),
        AmendmentKind.Relax => amendment.Value is null ? RowOf(amendment.Rule) is not null : TakesFigure(amendment.Rule),
        AmendmentKind.Add => amendment.Value is null && RowOf(amendment.Rule) is not null,
        _ => false,
    };

    /// <summary>The judged rules whose figure an amendment may change.</summary>
    public static ImmutableArray<RuleRow> WithFigure => [.. JudgedRules.All.Where(r => r.Has("figure_unit"))];

    /// <summary>Unit of a rule's figure; empty where it has none.</summary>
    public static string UnitOf(string code) => RowOf(code) is { } row && row.Has("figure_unit") ? row.Text("figure_unit") : "";

    /// <summary>The edition's own figure of a rule; null where it has none.</summary>
    public static decimal? FigureOf(string code) => code switch
    {
        "receptacle-spacing" => ReceptacleRules.WallBetween.Number(),
        "required-circuits" => WiringSettings.SmallApplianceCircuits.Number(),
        "bath-receptacle" => ReceptacleRules.BasinReach.Number(),
        "tub-zone" => PlacingLimits.TubReach.Number(),
        "service-receptacle" => PlacingLimits.ServiceReceptacleReach.Number(),
        "below-counter" => PlacingLimits.BelowCounter2026.Number(),
        "switch-height" => PlacingLimits.SwitchHighest.Number(),
        "free-conductor" => PlacingLimits.FreeConductor.Number(),
        "working-space" => PlacingLimits.WorkingDepth.Number(),
        "voltage-drop" => PracticeDefaults.BranchVoltageDropPercent.Number(),
        "service-least" => LoadRules.ServiceLeast.Number(),
        "alarm-near-bath" => PlacingLimits.AlarmBath.Number(),
        "alarm-near-cooking" => PlacingLimits.AlarmCooking.Number(),
        "range-circuit" => PlacingLimits.RangeLeast.Number(),
        _ => null,
    };

    /// <summary>Whether a rule holds at the site: as the edition says, unless it is waived or added there.</summary>
    internal static bool InForce(CodeBasis code, CodeRule rule)
    {
        var change = code.Amendments.LastOrDefault(a => a is { Value: null, Kind: AmendmentKind.Relax or AmendmentKind.Add } && a.Rule == rule.Code && Judges(a));
        return change is null ? rule.InForce : change.Kind is AmendmentKind.Add;
    }

    /// <summary>A rule's figure at the site.</summary>
    public static decimal Figure(CodeBasis code, string rule, decimal edition)
    {
        foreach (var amendment in code.Amendments.Where(a => a.Rule == rule && a.Value is not null && Judges(a)))
        {
            var stated = amendment.Value!.Value;
            var stricter = LessIsStricter == RowOf(rule)!.Text("stricter") ? Math.Min(edition, stated) : Math.Max(edition, stated);
            edition = amendment.Kind switch
            {
                AmendmentKind.Raise => stricter,
                AmendmentKind.Relax => stricter == edition ? stated : edition,
                _ => stated,
            };
        }

        return edition;
    }

    private static bool TakesFigure(string code) => UnitOf(code).Length > 0;

    private static RuleRow? RowOf(string code) => JudgedRules.All.FirstOrDefault(r => r.Key == code);
}
