using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.Web.Symbols;

namespace Estimator.Web.Rooms;

/// <summary>Rooms pasted from a spreadsheet: name, two sides, then counts in the order of the grid's columns, or under a head that names them.</summary>
/// <param name="Rooms">The rooms, where every row was understood.</param>
/// <param name="Problems">Row and column of what was not understood, and what is accepted; then nothing is taken.</param>
public sealed record PastedRooms(ImmutableArray<Room> Rooms, ImmutableArray<string> Problems)
{
    private const int NameAndSides = 3;

    /// <summary>Reads rows of cells divided by tabs.</summary>
    /// <param name="text">What was pasted.</param>
    /// <param name="columns">Kinds of the grid's columns, in order.</param>
    /// <param name="newId">Makes an id.</param>
    public static PastedRooms Read(string text, ImmutableArray<DeviceKind> columns, Func<string> newId)
    {
        var rows = text.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(r => r.Split('\t')).ToList();
        List<string> problems = [];
        ImmutableArray<DeviceKind?> kinds = [.. columns.Cast<DeviceKind?>()];
        var first = 1;
        if (rows.Count > 0 && IsHead(rows[0]))
        {
            kinds = [.. rows[0].Skip(NameAndSides).Select(Kind)];
            for (var c = 0; c < kinds.Length; c++)
            {
                if (kinds[c] is null)
                {
                    problems.Add($"Row 1, column {c + NameAndSides + 1}: found '{rows[0][c + NameAndSides]}'; a device is accepted: {string.Join(", ", Enum.GetValues<DeviceKind>().Select(k => DeviceSign.Of(k).Short))}.");
                }
            }

            rows.RemoveAt(0);
            first = 2;
        }

        if (rows.Count > JobLimits.Rooms)
        {
            problems.Add($"Found {rows.Count} rows; up to {JobLimits.Rooms} are accepted.");
        }

        var rooms = rows.Take(JobLimits.Rooms).Select((r, i) => Room(r, first + i, kinds, newId, problems)).ToList();
        return problems.Count > 0 ? new PastedRooms([], [.. problems]) : new PastedRooms([.. rooms.OfType<Room>()], []);
    }

    private static Room? Room(string[] cells, int row, ImmutableArray<DeviceKind?> kinds, Func<string> newId, List<string> problems)
    {
        var (width, depth) = (Side(cells, 1, row, problems), Side(cells, 2, row, problems));
        var name = cells[0].Trim();
        if (name.Length == 0)
        {
            problems.Add($"Row {row}, column 1: found nothing; the name of a room is accepted.");
        }

        var counts = ImmutableArray.CreateBuilder<DeviceCount>();
        for (var c = NameAndSides; c < cells.Length; c++)
        {
            var cell = cells[c].Trim();
            if (cell.Length == 0)
            {
                continue;
            }

            if (c - NameAndSides >= kinds.Length)
            {
                problems.Add($"Row {row}, column {c + 1}: found '{cell}' beyond the last device; {kinds.Length + NameAndSides} columns are accepted.");
            }
            else if (!int.TryParse(cell, out var count) || count is < 0 or > JobLimits.Count)
            {
                problems.Add($"Row {row}, column {c + 1}: found '{cell}'; a whole number from 0 to {JobLimits.Count} is accepted.");
            }
            else if (count > 0 && kinds[c - NameAndSides] is { } kind)
            {
                counts.Add(new DeviceCount { Kind = kind, Count = count });
            }
        }

        return width is { } w && depth is { } d
            ? new Room { Id = newId(), Name = name, Kind = RoomWords.Guess(name), Size = new RectangleSize(w, d), Counts = [.. counts.GroupBy(x => x.Kind).Select(g => g.First() with { Count = g.Sum(x => x.Count) })] }
            : null;
    }

    private static Length? Side(string[] cells, int column, int row, List<string> problems)
    {
        var side = RoomLine.Side(column < cells.Length ? cells[column] : "");
        if (side.Ok)
        {
            return side.Value;
        }

        problems.Add($"Row {row}, column {column + 1}: {side.Problem}");
        return null;
    }

    // Both sides are words in a head; one word among lengths is a mistake to be named.
    private static bool IsHead(string[] cells) => cells.Length >= NameAndSides && cells[1..NameAndSides].All(c => !RoomLine.Side(c).Ok && c.Any(char.IsLetter));

    private static DeviceKind? Kind(string word) => Enum.GetValues<DeviceKind>().Cast<DeviceKind?>().FirstOrDefault(k => DeviceSign.Of(k!.Value) is var sign && (IsWord(word, sign.Short) || IsWord(word, sign.Name)));

    private static bool IsWord(string word, string one) => Same(word, one) || Same(word, one + "s") || Same(word, one + "es");

    private static bool Same(string a, string b) => string.Equals(a.Trim(), b, StringComparison.OrdinalIgnoreCase);
}
