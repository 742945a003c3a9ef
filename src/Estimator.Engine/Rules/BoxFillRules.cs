namespace Estimator.Engine.Rules;

/// <summary>What counts in a box, by edition.</summary>
/// <remarks>Source: NEC 314.16(B).</remarks>
public static class BoxFillRules
{
    private static RuleTable Table => RuleTables.Of("box_fill");

    /// <summary>Internal clamps.</summary>
    public static RuleRow InternalClamps => Table["internal_clamps"];

    /// <summary>Luminaire stud.</summary>
    public static RuleRow LuminaireStud => Table["luminaire_stud"];

    /// <summary>Hickey.</summary>
    public static RuleRow Hickey => Table["hickey"];

    /// <summary>Yoke.</summary>
    public static RuleRow Yoke => Table["yoke"];

    /// <summary>Grounding conductors together.</summary>
    public static RuleRow Grounds => Table["grounds"];

    /// <summary>How many grounding conductors the one allowance covers.</summary>
    public static RuleRow GroundsIncluded => Table["grounds_included"];

    /// <summary>Each further grounding conductor.</summary>
    public static RuleRow FurtherGround => Table["further_ground"];

    /// <summary>Isolated grounding conductors.</summary>
    public static RuleRow IsolatedGrounds => Table["isolated_grounds"];

    /// <summary>Terminal block.</summary>
    public static RuleRow TerminalBlock => Table["terminal_block"];
}
