using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Framing;

/// <summary>Sets rooms that have sizes and no place beside one another, in rows about as long as the whole is deep.</summary>
internal sealed class RoomArranging
{
    private readonly PageWriter _page;
    private readonly Level _level;
    private readonly string _path;
    private readonly Dictionary<int, (ImmutableArray<int> Left, ImmutableArray<int> Below)> _places = [];
    private readonly Fact[] _tops;

    /// <param name="level">The level.</param>
    /// <param name="path">Its place in the job file.</param>
    /// <param name="page">Takes the facts of where rooms stand.</param>
    internal RoomArranging(Level level, string path, PageWriter page)
    {
        (_level, _path, _page) = (level, path, page);
        var loose = Enumerable.Range(0, level.Rooms.Length).Where(IsArranged)
            .OrderByDescending(Depth).ThenByDescending(Width).ThenBy(r => level.Rooms[r].Kind).ThenBy(r => level.Rooms[r].Counts.Sum(c => c.Count))
            .ThenBy(r => level.Rooms[r].Name, StringComparer.Ordinal).ThenBy(r => level.Rooms[r].Id, StringComparer.Ordinal).ToList();
        var rowLength = Roots.FloorOf(loose.Sum(r => (long)Width(r) * Depth(r)));
        var (x, row, below) = (0, ImmutableArray<int>.Empty, ImmutableArray<int>.Empty);
        foreach (var room in loose)
        {
            if (x > 0 && x + Width(room) > rowLength)
            {
                // The first of a row is its deepest.
                (x, row, below) = (0, [], below.Add(row[0]));
            }

            _places.Add(room, (row, below));
            (x, row) = (x + Width(room), row.Add(room));
        }

        _tops = loose.Count == 0 ? [] : [.. Enumerable.Range(0, level.Rooms.Length).Where(r => !IsArranged(r)).SelectMany(Tops)];
    }

    /// <summary>Whether the program sets a room.</summary>
    internal bool IsArranged(int room) => _level.Rooms[room] is { Size: not null, At: null };

    /// <summary>The lower-left corner of a room that the program sets: beside those of its row, above the rows before it and the rooms that have places.</summary>
    internal (Fact X, Fact Y) PlaceOf(int room)
    {
        var (left, below) = _places[room];
        List<Fact> rows = [.. below.Select(r => Side(r, "depth", _level.Rooms[r].Size!.Depth))];
        if (_tops.Length > 0)
        {
            rows.Add(_page.Compute(Operation.Maximum, "room-arranged", "End of the rooms that have places", Unit.Length, _tops));
        }

        return (
            _page.Sum("room-arranged", "Rooms that were set beside it", Unit.Length, [.. left.Select(r => Side(r, "width", _level.Rooms[r].Size!.Width))]),
            _page.Sum("room-arranged", "Rows of rooms below it", Unit.Length, rows));
    }

    private IEnumerable<Fact> Tops(int room) => _level.Rooms[room] is { Size: { } size, At: { } at }
        ? [_page.Sum("room-far-side", "Far side of the room", Unit.Length, [RoomOutline.Snap(_page, $"{_path}.rooms[{room}].at[1]", at.Y), Side(room, "depth", size.Depth)])]
        : _level.Rooms[room].Corners.Select((c, i) => RoomOutline.Snap(_page, $"{_path}.rooms[{room}].corners[{i}][1]", c.Y));

    private Fact Side(int room, string side, Length length) => RoomOutline.Snap(_page, $"{_path}.rooms[{room}].size.{side}", length);

    private int Width(int room) => _level.Rooms[room].Size!.Width.ToSixteenths();

    private int Depth(int room) => _level.Rooms[room].Size!.Depth.ToSixteenths();
}
