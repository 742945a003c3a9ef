using Estimator.Engine.House;

namespace Estimator.Engine.Rules;

/// <summary>Where a switch that controls lighting must find a neutral in its box.</summary>
/// <remarks>Source: NEC 404.2(C).</remarks>
public static class SwitchNeutrals
{
    /// <summary>Whether the rule asks for one at the switch of a load; where the light is counts, not where its switch is.</summary>
    /// <param name="load">What the switch controls.</param>
    /// <param name="room">The room that the load is in.</param>
    public static bool AskedFor(DeviceKind load, RoomKind room) => load.IsLuminaireOrFan() && load is not DeviceKind.ExhaustFan && For(room).Flag("asked");

    /// <summary>The row of a kind of room.</summary>
    public static RuleRow For(RoomKind room) => RuleTables.Of("neutral_at_switch")[Words.Snake(room)];
}
