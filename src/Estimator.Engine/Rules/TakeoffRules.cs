using Estimator.Engine.Measures;

namespace Estimator.Engine.Rules;

/// <summary>How small parts are counted.</summary>
public static class TakeoffRules
{
    private static RuleTable Table => RuleTables.Of("takeoff_rules");

    /// <summary>Farthest between staples, inches.</summary>
    public static RuleRow StapleSpacing => Table["staple_spacing"];

    /// <summary>Farthest first staple from a box, inches.</summary>
    public static RuleRow StapleFromBox => Table["staple_from_box"];

    /// <summary>Farthest first staple from a single-gang box without clamps, inches.</summary>
    public static RuleRow StapleFromSmallBox => Table["staple_from_small_box"];

    /// <summary>Staples at the ends of a run.</summary>
    public static RuleRow StapleEnds => Table["staple_ends"];

    /// <summary>Cable from a staple to a small box at most, inches.</summary>
    public static RuleRow FreeCable => Table["free_cable"];

    /// <summary>Edge of a hole from the edge of the member, inches.</summary>
    public static RuleRow EdgeDistance => Table["edge_distance"];

    /// <summary>Drops through plates for each nail plate.</summary>
    public static RuleRow DropsPerPlate => Table["drops_per_plate"];

    /// <summary>First edition with surge protection at the service, by its year.</summary>
    public static RuleRow SurgeFromEdition => Table["surge_from_edition"];

    /// <summary>Ground rods at a new service panel.</summary>
    public static RuleRow GroundRods => Table["ground_rods"];

    /// <summary>Grounding electrode conductor at a new service panel, feet.</summary>
    public static RuleRow ElectrodeConductor => Table["electrode_conductor"];

    /// <summary>Rating of receptacles on required circuits.</summary>
    public static RuleRow RequiredReceptacleA => Table["required_receptacle_a"];

    /// <summary>Rating of receptacles on general circuits.</summary>
    public static RuleRow GeneralReceptacleA => Table["general_receptacle_a"];

    /// <summary>Rating of the 240 V receptacle of a circuit; a circuit beyond the largest has a receptacle of its own rating.</summary>
    public static int ApplianceReceptacleA(decimal breaker) =>
        (int)(Table.Rows.Where(r => r.Has("rating")).Select(r => r.Number("rating")).Order().Cast<decimal?>().FirstOrDefault(r => r >= breaker) ?? breaker);

    /// <summary>Visits for permit and inspections.</summary>
    public static RuleRow PermitVisits => Table["permit_visits"];

    /// <summary>Phases that are set up and cleared.</summary>
    public static RuleRow Mobilizations => Table["mobilizations"];

    /// <summary>The trade size of the connector for so many conductors of a size.</summary>
    public static RuleRow ConnectorFor(WireSize size, int conductors)
    {
        var sizes = Table.Rows.Where(r => r.Has("connector")).ToList();
        var own = sizes.Where(r => r.Text("size") == size.ToString()).ToList();
        return (own.Count > 0 ? own : sizes.Where(r => r.Text("size") == "8")).First(r => r.Number("most") >= conductors);
    }
}
