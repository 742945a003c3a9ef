using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.JobFiles;

/// <summary>Checks that ids are unique and that what refers to them finds them; that openings fit their walls.</summary>
internal static class References
{
    internal static void Check(Job job, ProblemList problems)
    {
        var rooms = job.Levels.SelectMany((l, i) => l.Rooms.Select((r, j) => (r.Id, Path: $"$.levels[{i}].rooms[{j}].id"))).ToList();
        Unique(rooms, problems);
        Unique([.. job.Levels.Select((l, i) => (l.Id, $"$.levels[{i}].id"))], problems);
        Unique(
            [
                .. job.Levels.SelectMany((l, i) => l.Rooms.SelectMany((r, j) => r.Placed.Select((d, k) => (d.Id, $"$.levels[{i}].rooms[{j}].placed[{k}].id")))),
                .. job.Equipment.Select((e, i) => (e.Id, $"$.equipment[{i}].id")),
                .. job.Panels.Select((p, i) => (p.Id, $"$.panels[{i}].id")),
            ],
            problems);
        Unique([.. job.Levels.SelectMany((l, i) => l.Openings.Select((o, j) => (o.Id, $"$.levels[{i}].openings[{j}].id")))], problems);
        Unique([.. job.Controls.Select((c, i) => (c.Id, $"$.controls[{i}].id"))], problems);
        Unique([.. job.Pins.Circuits.Select((c, i) => (c.Id, $"$.pins.circuits[{i}].id"))], problems);
        Unique([.. job.Bid.Allowances.Select((a, i) => (a.Id, $"$.bid.allowances[{i}].id"))], problems);
        Unique([.. job.Bid.Scope.Select((s, i) => (s.Id, $"$.bid.scope[{i}].id"))], problems);
        Unique([.. job.Unknowns.Select((u, i) => (u.Id, $"$.unknowns[{i}].id"))], problems);
        Unique([.. job.Alternates.Select((a, i) => (a.Id, $"$.alternates[{i}].id"))], problems);
        Unique([.. job.AlternatePackages.Select((a, i) => (a.Id, $"$.alternate_packages[{i}].id"))], problems);
        AlternateValidation.Check(job, problems);
        Unique([.. job.Buildings.Select((b, i) => (b.Id, $"$.buildings[{i}].id"))], problems);
        Unique([.. job.Code.Amendments.Select((a, i) => (a.Id, $"$.code.amendments[{i}].id"))], problems);
        foreach (var (panel, p) in job.Panels.Select((x, i) => (x, i)))
        {
            Unique([.. panel.Circuits.Select((c, i) => (c.Id, $"$.panels[{p}].circuits[{i}].id"))], problems);
        }

        var known = rooms.Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        Openings(job, known, problems);
        BuildingValidation.Check(job, problems);
        Panels(job, known, problems);
        foreach (var (equipment, e) in job.Equipment.Select((x, i) => (x, i)))
        {
            Room(equipment.Room, known, $"$.equipment[{e}].room", problems);
            OnWall(job, equipment.Room, equipment.Wall, $"$.equipment[{e}].wall", problems);
        }

        foreach (var (unknown, u) in job.Unknowns.Select((x, i) => (x, i)).Where(x => x.x.Room is not null))
        {
            Room(unknown.Room!, known, $"$.unknowns[{u}].room", problems);
        }

        DeviceReferences.Check(job, problems);
    }

    private static void Openings(Job job, HashSet<string> rooms, ProblemList problems)
    {
        foreach (var (opening, path) in job.Levels.SelectMany((l, i) => l.Openings.Select((o, j) => (o, $"$.levels[{i}].openings[{j}]"))))
        {
            Room(opening.Room, rooms, $"{path}.room", problems);
            if (opening.OtherRoom is { } other)
            {
                Room(other, rooms, $"{path}.other_room", problems);
            }

            problems.Length($"{path}.width", opening.Width, Length.FromInches(1), Length.FromFeet(60));
            problems.Length($"{path}.sill", opening.Sill, Length.Zero, Length.FromFeet(40));
            problems.Length($"{path}.head", opening.Head, opening.Sill is { } sill ? Length.Max(sill, Length.Zero) : Length.Zero, Length.FromFeet(40));
            if (opening.At is null == opening.Wall is null)
            {
                problems.Add(path, opening.At is null ? "neither at nor wall" : "both at and wall", "one of them");
            }

            OnWall(job, opening.Room, opening.Wall, $"{path}.wall", problems);
            Fits(job, opening, path, problems);
        }
    }

    private static void Fits(Job job, Opening opening, string path, ProblemList problems)
    {
        if (opening.Wall is not { } spot || Find(job, opening.Room) is not { } room || RoomSides.Of(room) is var sides && (spot.Side < 1 || spot.Side > sides.Length))
        {
            return;
        }

        if (opening.Width > sides[spot.Side - 1])
        {
            problems.Add($"{path}.width", opening.Width.ToString(), $"a width to {sides[spot.Side - 1]}, the length of its wall");
        }
    }

    private static void Panels(Job job, HashSet<string> rooms, ProblemList problems)
    {
        var panels = job.Panels.Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var (panel, p) in job.Panels.Select((x, i) => (x, i)))
        {
            Room(panel.Room, rooms, $"$.panels[{p}].room", problems);
            OnWall(job, panel.Room, panel.Wall, $"$.panels[{p}].wall", problems);
            if (panel.FedFrom is { } from && (!panels.Contains(from) || from == panel.Id))
            {
                problems.Add($"$.panels[{p}].fed_from", $"'{from}'", $"the id of another panel: {string.Join(", ", panels.Where(x => x != panel.Id))}");
            }
            else if (FeedsItself(job, panel))
            {
                problems.Add($"$.panels[{p}].fed_from", $"'{panel.FedFrom}', which is fed from this panel in turn", "panels that lead to the service panel, which is fed from none");
            }
        }

        foreach (var (circuit, path) in job.Panels.SelectMany((p, i) => p.Circuits.Select((c, j) => (c, $"$.panels[{i}].circuits[{j}].moved_to"))).Where(x => x.c.MovedTo is { } to && !panels.Contains(to)))
        {
            problems.Add(path, $"'{circuit.MovedTo}'", $"the id of a panel: {string.Join(", ", panels)}");
        }

        foreach (var (pin, i) in job.Pins.Circuits.Select((x, i) => (x, i)).Where(x => !panels.Contains(x.x.Panel)))
        {
            problems.Add($"$.pins.circuits[{i}].panel", $"'{pin.Panel}'", $"the id of a panel: {string.Join(", ", panels)}");
        }

        var pins = job.Pins.Circuits;
        foreach (var (pin, i) in pins.Select((x, i) => (x, i)).Where(x => x.x.SharesNeutralWith is { } other && !pins.Any(o => o.Id == other && o.Id != x.x.Id && o.Panel == x.x.Panel && o.SharesNeutralWith is null)))
        {
            problems.Add($"$.pins.circuits[{i}].shares_neutral_with", $"'{pin.SharesNeutralWith}'", "the id of another pinned circuit of the same panel that shares with none");
        }

        foreach (var twice in pins.Select((x, i) => (x, i)).Where(x => x.x.SharesNeutralWith is not null).GroupBy(x => x.x.SharesNeutralWith!, StringComparer.Ordinal).SelectMany(g => g.Skip(1)))
        {
            problems.Add($"$.pins.circuits[{twice.i}].shares_neutral_with", $"'{twice.x.SharesNeutralWith}' a second time", "two circuits to a neutral");
        }
    }

    private static bool FeedsItself(Job job, Panel panel)
    {
        var at = panel.FedFrom;
        for (var steps = 0; at is not null && steps < job.Panels.Length; steps++)
        {
            if (at == panel.Id)
            {
                return true;
            }

            at = job.Panels.FirstOrDefault(p => p.Id == at)?.FedFrom;
        }

        return false;
    }

    private static void OnWall(Job job, string roomId, WallSpot? spot, string path, ProblemList problems)
    {
        if (spot is not null && Find(job, roomId) is { } room)
        {
            RoomValidation.Wall(spot, RoomSides.Of(room), path, problems);
        }
    }

    private static Room? Find(Job job, string id) => job.Levels.SelectMany(l => l.Rooms).FirstOrDefault(r => r.Id == id);

    private static void Room(string id, HashSet<string> rooms, string path, ProblemList problems)
    {
        if (!rooms.Contains(id))
        {
            problems.Add(path, $"'{id}'", $"the id of a room: {string.Join(", ", rooms.Take(12))}{(rooms.Count > 12 ? ", ..." : "")}");
        }
    }

    private static void Unique(IReadOnlyList<(string Id, string Path)> ids, ProblemList problems)
    {
        foreach (var twice in ids.GroupBy(i => i.Id, StringComparer.Ordinal).Where(g => g.Count() > 1 || g.Key.Length == 0))
        {
            problems.Add(twice.Last().Path, twice.Key.Length == 0 ? "an empty id" : $"'{twice.Key}' a second time", "an id that nothing else has");
        }
    }
}
