using System.Collections.Immutable;
using Estimator.Engine.House;

namespace Estimator.Web.Budget;

/// <summary>A homeowner's answers. They are read back from the job that they made, so nothing but the job is stored.</summary>
public sealed record BudgetAnswers
{
    /// <summary>What is wired.</summary>
    public BudgetPlace Place { get; init; } = BudgetPlace.Basement;

    /// <summary>Which rooms.</summary>
    public ImmutableArray<BudgetRoom> Rooms { get; init; } = [];

    /// <summary>Whether walls are open.</summary>
    public BudgetWalls Walls { get; init; } = BudgetWalls.Open;

    /// <summary>What gets a supply of its own.</summary>
    public ImmutableArray<EquipmentKind> Supplies { get; init; } = [];

    /// <summary>The panel.</summary>
    public BudgetPanel Panel { get; init; } = new();

    /// <summary>Who does the work.</summary>
    public BudgetWorker Worker { get; init; } = BudgetWorker.Firm;

    /// <summary>What the firm asks for an hour, everything in it; null where nobody asked yet.</summary>
    public decimal? HourRate { get; init; }

    /// <summary>The same rooms with the least that the code asks for.</summary>
    public BudgetAnswers Least => this with { Rooms = [.. Rooms.Select(r => r.Least)], Supplies = [] };

    /// <summary>The answers with a room changed.</summary>
    public BudgetAnswers With(string room, Func<BudgetRoom, BudgetRoom> change) => this with { Rooms = [.. Rooms.Select(r => r.Id == room ? change(r) : r)] };

    /// <summary>The answers with one more room of a kind, of the usual size.</summary>
    public BudgetAnswers Add(RoomKind kind, string name)
    {
        var alike = Rooms.Count(r => r.Kind == kind);
        var id = Enumerable.Range(1, Rooms.Length + 1).Select(n => $"R{n}").First(i => Rooms.All(r => r.Id != i));
        return this with { Rooms = Rooms.Add(new BudgetRoom(id, alike == 0 ? name : $"{name} {alike + 1}", kind, BudgetTable.UsualSize(kind))) };
    }

    /// <summary>The answers without a room; a panel in it moves to the part that stays as it is.</summary>
    public BudgetAnswers Without(string room) => this with
    {
        Rooms = [.. Rooms.Where(r => r.Id != room)],
        Panel = Panel.Room == room ? Panel with { Room = "" } : Panel,
    };
}
