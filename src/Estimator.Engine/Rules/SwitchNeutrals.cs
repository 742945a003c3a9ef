using Estimator.Engine.House;

namespace Estimator.Engine.Rules;

/// <summary>Where a switch that controls lighting must find a neutral in its box.</summary>
/// <remarks>Source: NEC 404.2(C).</remarks>
public static class SwitchNeutrals
{
    /// <summary>Whether the rule asks for one in a room of this kind.</summary>
    public static bool AskedIn(RoomKind room) => For(room).Flag("asked");

    /// <summary>The row of a kind of room.</summary>
    public static RuleRow For(RoomKind room) => RuleTables.Of("neutral_at_switch")[Words.Snake(room)];
}
