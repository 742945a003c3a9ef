using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Web.Entries;

namespace Estimator.Web.Appliances;

/// <summary>Trade words for equipment, and what is meant by a word that was typed.</summary>
public static class EquipmentWords
{
    /// <summary>All kinds to choose from.</summary>
    public static IReadOnlyList<Option> Kinds { get; } = Option.Of<EquipmentKind>(Of);

    /// <summary>What a kind is called.</summary>
    public static string Of(EquipmentKind kind) => EquipmentDefaults.For(kind).Label;

    /// <summary>What a piece is called.</summary>
    public static string Of(Equipment equipment) => equipment.Name.Length > 0 ? equipment.Name : Of(equipment.Kind);

    /// <summary>How equipment meets its circuit.</summary>
    public static string Of(Connection connection) => connection switch
    {
        Connection.Receptacle => "plug",
        Connection.HardWired => "hard-wired",
        _ => throw new ArgumentOutOfRangeException(nameof(connection), connection, "No such connection."),
    };

    /// <summary>How equipment is cut off for service, to choose from.</summary>
    public static IReadOnlyList<Option> Disconnects { get; } = Option.Of<DisconnectPlace>("not stated", Of);

    /// <summary>How equipment is cut off for service.</summary>
    public static string Of(DisconnectPlace place) => place switch
    {
        DisconnectPlace.WithinSight => "a disconnect in sight",
        DisconnectPlace.Lockable => "a lock on its breaker",
        DisconnectPlace.None => "nothing",
        _ => throw new ArgumentOutOfRangeException(nameof(place), place, "No such place."),
    };

    /// <summary>The connection that is taken where none is stated.</summary>
    public static Connection UsualConnection(EquipmentKind kind) => EquipmentDefaults.For(kind).Text("connection") == "receptacle" ? Connection.Receptacle : Connection.HardWired;

    /// <summary>The kind that a word means: its name, or the beginning of one word of it that no other kind has. Anything else is other equipment of that name.</summary>
    public static Parsed<EquipmentKind> Read(string text)
    {
        var word = text.Trim();
        if (word.Length == 0)
        {
            return Parsed<EquipmentKind>.Failure(Typed.Wrong("", "what it is, such as dryer, EV or hot tub"));
        }

        var kinds = Enum.GetValues<EquipmentKind>();
        var exact = kinds.Where(k => string.Equals(Of(k), word, StringComparison.OrdinalIgnoreCase) || string.Equals(Short(k), word, StringComparison.OrdinalIgnoreCase)).ToList();
        var begun = kinds.Where(k => k is not EquipmentKind.Other && Of(k).Split(' ').Any(w => w.StartsWith(word, StringComparison.OrdinalIgnoreCase))).ToList();
        return exact.Count == 1 ? Parsed<EquipmentKind>.Success(exact[0])
            : begun.Count == 1 ? Parsed<EquipmentKind>.Success(begun[0])
            : begun.Count > 1 ? Parsed<EquipmentKind>.Failure(Typed.Wrong(word, $"one of {string.Join(", ", begun.Select(Of))}"))
            : Parsed<EquipmentKind>.Success(EquipmentKind.Other);
    }

    private static string Short(EquipmentKind kind) => kind switch
    {
        EquipmentKind.AirConditioner => "AC",
        EquipmentKind.EvCharger => "EV",
        _ => "",
    };
}
