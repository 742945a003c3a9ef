using System.Collections.Immutable;
using System.Globalization;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Web.Jobs;
using Estimator.Web.Symbols;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Rooms;

/// <summary>A room of the grid.</summary>
public sealed partial class RoomGridRow
{
    /// <summary>The room.</summary>
    [Parameter, EditorRequired]
    public Room Room { get; set; } = default!;

    /// <summary>Columns of the grid.</summary>
    [Parameter, EditorRequired]
    public ImmutableArray<(DeviceKind Kind, string Group, bool First)> Columns { get; set; }

    /// <summary>What the rule asks for.</summary>
    [Parameter]
    public RuleCounts Rule { get; set; } = RuleCounts.None;

    /// <summary>Openings and cable, once they are worked out.</summary>
    [Parameter]
    public (Fact Openings, Fact Cable)? Figures { get; set; }

    /// <summary>Whether the program arranged the room itself.</summary>
    [Parameter]
    public bool Assumed { get; set; }

    /// <summary>Whether its editor is open.</summary>
    [Parameter]
    public bool Opened { get; set; }

    /// <summary>Opens or closes the editor.</summary>
    [Parameter]
    public EventCallback OnOpen { get; set; }

    private string Sides => $"{(Room.Size is { } size ? $"{Short(size.Width)} × {Short(size.Depth)}" : $"{Room.Corners.Length} corners")}{(Assumed ? ", place assumed" : "")}";

    // 12' 0" is read as 12'.
    private static string Short(Estimator.Engine.Measures.Length length) => length.ToString().Replace(" 0\"", "", StringComparison.Ordinal);

    private Task<bool> RepeatAsync()
    {
        var id = $"R{Guid.NewGuid().ToString("N")[..7]}";
        return Desk.EditAsync($"{RoomActs.Name(Room)}: repeated", j => RoomAdding.Repeat(j, Room.Id, id));
    }

    private Task TypeAsync(DeviceKind kind, int before, ChangeEventArgs e)
    {
        var text = (e.Value as string ?? "").Trim();
        if (text.Length == 0)
        {
            return SetAsync(kind, 0);
        }

        // What is no count leaves the count that was; the grid is drawn again with it.
        return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) ? SetAsync(kind, Math.Min(count, JobLimits.Count)) : SetAsync(kind, before);
    }

    private Task SetAsync(DeviceKind kind, int count)
    {
        var before = RoomActs.Count(Room, kind);
        return count < 0 || count == before
            ? Task.CompletedTask
            : Desk.EditAsync($"{RoomActs.Name(Room)}: {DeviceSign.Of(kind).Name}s {before} to {count}", j => RoomActs.Set(j, Room.Id, kind, count));
    }

    private Task TakeOutAsync(DeviceKind kind) =>
        Desk.EditAsync($"{RoomActs.Name(Room)}: one {DeviceSign.Of(kind).Name} taken out of its place", j => RoomActs.TakeOutPlaced(j, Room.Id, kind));

    // A GFCI receptacle counts as a receptacle, and a combined alarm as a smoke alarm.
    private bool Covered(DeviceKind kind, int least) => kind switch
    {
        DeviceKind.DuplexReceptacle => All(DeviceKind.DuplexReceptacle, DeviceKind.GfciReceptacle, DeviceKind.HalfHotReceptacle) >= least,
        DeviceKind.SmokeAlarm or DeviceKind.SmokeCoAlarm => All(DeviceKind.SmokeAlarm, DeviceKind.SmokeCoAlarm) >= least,
        _ => false,
    };

    private int All(params ReadOnlySpan<DeviceKind> kinds)
    {
        var sum = 0;
        foreach (var kind in kinds)
        {
            sum += RoomActs.Count(Room, kind) + RoomActs.Placed(Room, kind);
        }

        return sum;
    }
}
