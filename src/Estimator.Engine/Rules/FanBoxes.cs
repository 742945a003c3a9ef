using Estimator.Engine.House;

namespace Estimator.Engine.Rules;

/// <summary>Where a ceiling box must be one that a fan may hang from.</summary>
/// <remarks>Any ceiling light of a habitable room is taken to hang where a fan could. Source: NEC 314.27(C), from 2020.</remarks>
public static class FanBoxes
{
    /// <summary>The rule's key.</summary>
    public const string Key = "fan-box";

    /// <summary>Whether the rule holds at the site and for the room.</summary>
    public static bool AskedFor(CodeBasis code, RoomKind room) => Habitable(room) && LocalRules.InForce(code, CodeRules.For(Key, code.Edition));

    private static bool Habitable(RoomKind room) => room is RoomKind.Living or RoomKind.Dining or RoomKind.Family or RoomKind.Kitchen or RoomKind.Bedroom or RoomKind.Office
        or RoomKind.Habitable or RoomKind.Sunroom;
}
