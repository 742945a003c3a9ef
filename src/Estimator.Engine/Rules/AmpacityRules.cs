namespace Estimator.Engine.Rules;

/// <summary>Correction and adjustment of ampacity.</summary>
/// <remarks>Source: NEC 310.15, 422.11(E).</remarks>
public static class AmpacityRules
{
    /// <summary>The correction for an ambient temperature and an insulation temperature of 60, 75 or 90; null where none is allowed.</summary>
    public static decimal? Ambient(decimal celsius, int insulation)
    {
        var row = RuleTables.Of("ambient_correction").Rows.FirstOrDefault(r => celsius <= r.Number("to_c"));
        return row is not null && row.Has($"factor_{insulation}c") ? row.Number($"factor_{insulation}c") : null;
    }

    /// <summary>The adjustment for a number of current-carrying conductors, in percent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no conductor.</exception>
    public static decimal Adjustment(int conductors)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(conductors, 1);
        return RuleTables.Of("conductor_adjustment").Rows.Last(r => r.Number("from") <= conductors).Number("percent");
    }

    /// <summary>The device of a single appliance at most, percent of its rated current.</summary>
    public static decimal AppliancePercent => RuleTables.Of("appliance_devices")["percent"].Number();
}
