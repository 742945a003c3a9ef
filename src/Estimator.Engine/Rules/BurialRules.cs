using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Rules;

/// <summary>How wiring lies in the ground between buildings.</summary>
/// <remarks>Source: NEC table 300.5, 225.30, 225.39, from memory; sleeves are common practice, no source.</remarks>
public static class BurialRules
{
    private static RuleTable Table => RuleTables.Of("burial_rules");

    /// <summary>Outside walls that a way through a trench passes.</summary>
    public static RuleRow WallHoles => Table["wall_holes"];

    /// <summary>Ends of a trench.</summary>
    public static RuleRow Ends => Table["ends"];

    /// <summary>Conduit over cable at each end, feet.</summary>
    public static RuleRow SleeveFeet => Table["sleeve_feet"];

    /// <summary>Straps of that conduit at each end.</summary>
    public static RuleRow SleeveStraps => Table["sleeve_straps"];

    /// <summary>Conduit bodies at each end.</summary>
    public static RuleRow SleeveBodies => Table["sleeve_bodies"];

    /// <summary>Feeders or branch circuits that may supply a building.</summary>
    public static RuleRow Supplies => Table["supplies"];

    /// <summary>What lies in the trench of a building: what the job says, else conduit to a panel and cable to a circuit's outlets.</summary>
    public static WiringMethod MethodOf(Job job, Building building) => building.Buried
        ?? (job.Levels.SelectMany(l => l.Rooms).Any(r => r.Building == building.Id && job.Panels.Any(p => p.Room == r.Id)) ? WiringMethod.BuriedConduit : WiringMethod.Uf);

    /// <summary>Cover over what lies in the trench of a building, inches.</summary>
    public static RuleRow Cover(Job job, Building building) => Table[$"{Words.Snake(MethodOf(job, building))}_{(building.UnderDriveway ? "driveway" : "cover")}"];

    /// <summary>The conduit, as a catalogue item, that protects cable of a size where it comes out of the ground.</summary>
    public static RuleRow Sleeve(WireSize size) => Table.Rows.Where(r => r.Has("to_size")).FirstOrDefault(r => size <= WireSize.Parse(r.Text("to_size")).Value) ?? Table["sleeve_large"];

    /// <summary>Least rating of the disconnect of a building with so many circuits, amperes.</summary>
    public static RuleRow PanelLeast(int circuits) => Table[circuits <= Table["two_circuits"].Number() ? "panel_two_circuits" : "panel_least"];
}
