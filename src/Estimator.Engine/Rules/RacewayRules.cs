using Estimator.Engine.Measures;

namespace Estimator.Engine.Rules;

/// <summary>How raceways and armored cable are filled, bent and supported.</summary>
/// <remarks>Source: NEC chapter 9 tables 1, 4 and 5; 330.30, 352.26, 352.30, 358.26, 358.30.</remarks>
public static class RacewayRules
{
    private static RuleTable Table => RuleTables.Of("raceway_rules");

    /// <summary>Quarter bends between pull points at most.</summary>
    public static RuleRow QuarterBends => Table["quarter_bends"];

    /// <summary>Farthest between supports of MC cable, feet.</summary>
    public static RuleRow ArmoredSupport => Table["mc_support"];

    /// <summary>Supports near the ends of a run.</summary>
    public static RuleRow EndSupports => Table["end_supports"];

    /// <summary>Length of a stick of conduit, feet.</summary>
    public static RuleRow Stick => Table["stick"];

    /// <summary>Connectors of a run.</summary>
    public static RuleRow Fittings => Table["fittings"];

    /// <summary>Farthest between supports of a raceway, feet.</summary>
    /// <param name="raceway">emt or pvc.</param>
    public static RuleRow Support(string raceway) => Table[$"{raceway}_support"];

    /// <summary>Share of a raceway that so many conductors may fill, in percent; three stand for any more.</summary>
    public static RuleRow Fill(int conductors) => Table[FormattableString.Invariant($"fill_{Math.Clamp(conductors, 1, 3)}")];

    /// <summary>Trade sizes of a raceway, the smallest first, with their inside areas in square inches.</summary>
    /// <param name="raceway">emt or pvc.</param>
    public static IEnumerable<RuleRow> Sizes(string raceway) => RuleTables.Of("raceways").Rows.Where(r => r.Text("raceway") == raceway);

    /// <summary>Area of a conductor with its insulation, in square inches; null for a size that the table lacks.</summary>
    public static RuleRow? ConductorArea(WireSize size) => RuleTables.Of("conductor_areas").Has(size.ToString()) ? RuleTables.Of("conductor_areas")[size.ToString()] : null;
}
