using System.Collections.Immutable;
using System.Text.Json;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Web.Start;

namespace Estimator.Web.Budget;

/// <summary>What the budget's questions start from: usual sizes of rooms, and what a wish stands for.</summary>
/// <remarks>The figures stand in <c>budget_questions.json</c>. Source: common practice, no source.</remarks>
public static class BudgetTable
{
    private static readonly RuleTable Table = RuleTable.Read("budget_questions", Resources.Read("budget_questions.json"));

    /// <summary>Kinds of rooms that are offered, each with the word for it.</summary>
    public static ImmutableArray<(RoomKind Kind, string Name)> Rooms { get; } =
    [
        .. new[] { RoomKind.Family, RoomKind.Bedroom, RoomKind.Office, RoomKind.Bathroom, RoomKind.Hall, RoomKind.Laundry, RoomKind.Kitchen, RoomKind.Storage }
            .Select(k => (k, Table[Key(k)].Label)),
    ];

    /// <summary>Distance of receptacles, where more than the least are wanted.</summary>
    public static Length CloseReceptacles => Table["close_receptacles"].Feet();

    /// <summary>Floor for each recessed light, in square feet.</summary>
    public static decimal RecessedArea => Table["recessed_area"].Number();

    /// <summary>Breaker of a circuit that is there already.</summary>
    public static Current ExistingBreaker => Current.FromAmperes((int)Table["existing_breaker"].Number());

    /// <summary>Local prices before dollars are believed.</summary>
    public static int LocalPrices => (int)Table["local_prices"].Number();

    /// <summary>Shortest and longest side of a room.</summary>
    public static (Length Least, Length Most) Sides => (Table["least_side"].Feet(), Table["most_side"].Feet());

    /// <summary>The room in which the panel hangs where it is none of those that are wired.</summary>
    public static RectangleSize RestSize => Size("rest");

    /// <summary>What that room is called.</summary>
    public static string RestName => Table["rest"].Label;

    /// <summary>Usual size of a kind of room.</summary>
    public static RectangleSize UsualSize(RoomKind kind) => Size(Key(kind));

    private static RectangleSize Size(string key) => new(Table[key].Feet("width"), Table[key].Feet("depth"));

    private static string Key(RoomKind kind) => JsonNamingPolicy.SnakeCaseLower.ConvertName(kind.ToString());
}
