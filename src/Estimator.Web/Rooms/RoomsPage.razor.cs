using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Web.Jobs;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Rooms;

/// <summary>Rooms and their devices as a grid that is worked with the keyboard.</summary>
public sealed partial class RoomsPage
{
    private string? _line;
    private string? _lineProblem;
    private string? _opened;
    private bool _all;
    private ImmutableArray<string> _pasteProblems = [];
    private RuleCounts _rule = RuleCounts.None;
    private RoomFigures? _figures;
    private PricedJob? _measured;

    /// <summary>The job of the address.</summary>
    [Parameter]
    public string JobId { get; set; } = "";

    private IEnumerable<Room> Rooms => RoomActs.All(Desk.Job);

    private ImmutableArray<(DeviceKind Kind, string Group, bool First)> Columns => GridColumns.Shown(Desk.Job, _all);

    /// <inheritdoc/>
    protected override Task OnInitializedAsync() => DeskChangedAsync();

    /// <inheritdoc/>
    protected override async Task DeskChangedAsync()
    {
        if (Desk.Priced is not { } priced || ReferenceEquals(priced, _measured))
        {
            return;
        }

        _measured = priced;
        var (rule, figures) = await Task.Run(() => (RuleCounts.For(priced.Job), RoomFigures.Of(priced)), Gone);
        if (ReferenceEquals(priced, _measured))
        {
            (_rule, _figures) = (rule, figures);
        }
    }

    private static string NewId() => $"R{Guid.NewGuid().ToString("N")[..7]}";

    private bool IsArranged(string roomId) => Desk.Priced?.Estimate.House.Rooms.FirstOrDefault(r => r.Source.Id == roomId)?.Arranged ?? false;

    private async Task AddAsync()
    {
        if (string.IsNullOrWhiteSpace(_line))
        {
            _lineProblem = "Found nothing; a name and two sides are accepted, like Bedroom 11 x 13.";
            return;
        }

        var parsed = RoomLine.Parse(_line);
        _lineProblem = parsed.Problem;
        if (parsed.Ok)
        {
            // The line is empty before the room is stored, so that the next one can be typed at once; what is refused comes back.
            var (line, id, typed) = (parsed.Value, NewId(), _line);
            _line = null;
            StateHasChanged();
            if (!await Desk.EditAsync($"{line.Name}: added", j => RoomAdding.Add(j, id, line.Name, RoomWords.Guess(line.Name), line.Width, line.Depth, [])))
            {
                _line = typed;
            }
        }
    }

    private Task<bool> AddTemplateAsync(RoomTemplate template)
    {
        var id = NewId();
        return Desk.EditAsync($"{template.Title}: added", j => RoomAdding.Add(j, id, RoomAdding.NextName(j, template.Title), template.Kind, template.Width, template.Depth, template.Extras));
    }

    private async Task PasteAsync(ChangeEventArgs e)
    {
        var pasted = PastedRooms.Read(e.Value as string ?? "", [.. Columns.Select(c => c.Kind)], NewId);
        _pasteProblems = pasted.Problems;
        if (!pasted.Rooms.IsEmpty)
        {
            await Desk.EditAsync($"{Figures.American.Count(pasted.Rooms.Length, "room")} pasted", j => pasted.Rooms.Aggregate(j, RoomAdding.Put));
        }
    }
}
