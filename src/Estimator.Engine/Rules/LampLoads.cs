using Estimator.Engine.House;

namespace Estimator.Engine.Rules;

/// <summary>Load that planning counts for lights, fans and alarms.</summary>
public static class LampLoads
{
    /// <summary>The row of a kind of light, fan or alarm, in volt-amperes.</summary>
    public static RuleRow For(DeviceKind kind) => RuleTables.Of("lamp_loads")[Words.Snake(kind)];
}
