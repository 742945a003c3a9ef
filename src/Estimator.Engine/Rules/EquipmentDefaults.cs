using Estimator.Engine.House;

namespace Estimator.Engine.Rules;

/// <summary>What a piece of equipment is taken for where the user gives no nameplate.</summary>
public static class EquipmentDefaults
{
    /// <summary>The row of a kind: volts, load, connection, own circuit, height, continuous duty, neutral.</summary>
    public static RuleRow For(EquipmentKind kind) => RuleTables.Of("equipment")[Words.Snake(kind)];
}
