using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Rules;

/// <summary>Grounding electrode conductors.</summary>
/// <remarks>Source: NEC table 250.66 with (A) and (B).</remarks>
public static class ElectrodeConductors
{
    private static RuleTable Table => RuleTables.Of("electrode_conductors");

    /// <summary>The copper conductor for service conductors of a size, as to a metal water pipe.</summary>
    public static WireSize For(WireSize service, ConductorMetal metal)
    {
        var column = metal is ConductorMetal.Copper ? "copper_to" : "aluminium_to";
        var rows = Table.Rows.Where(r => r.Has(column)).ToList();
        return Size(rows.FirstOrDefault(r => Size(r, column) >= service) ?? rows[^1]);
    }

    /// <summary>The conductor to ground rods alone.</summary>
    public static WireSize ToRods(WireSize service, ConductorMetal metal) => Least(For(service, metal), Size(Table["rod_most"]));

    /// <summary>The conductor to a concrete-encased electrode alone.</summary>
    public static WireSize ToConcrete(WireSize service, ConductorMetal metal) => Least(For(service, metal), Size(Table["encased_most"]));

    private static WireSize Size(RuleRow row, string column = "conductor") => WireSize.Parse(row.Text(column)).Value;

    private static WireSize Least(WireSize a, WireSize b) => a < b ? a : b;
}
