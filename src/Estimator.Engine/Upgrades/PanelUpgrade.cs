using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Upgrades;

/// <summary>One way to give a full panel room, as a change of the job.</summary>
/// <param name="Kind">Which way.</param>
/// <param name="PanelId">The panel that is full.</param>
/// <param name="RatingA">Rating of the panel that is added or put in its place, in amperes; 0 for tandems.</param>
/// <param name="Spaces">Its spaces; 0 for tandems.</param>
/// <param name="Circuits">Circuits that are put on tandems, or moved to the subpanel.</param>
public sealed record PanelUpgrade(UpgradeKind Kind, string PanelId, decimal RatingA, int Spaces, ImmutableArray<string> Circuits)
{
    /// <summary>What is done, in a few words.</summary>
    public string Title => Kind switch
    {
        UpgradeKind.Tandems => FormattableString.Invariant($"Put {Circuits.Length} circuits on {Circuits.Length / 2} tandem breakers"),
        UpgradeKind.Subpanel => FormattableString.Invariant($"Add a subpanel of {RatingA:0} A with {Spaces} spaces beside it"),
        UpgradeKind.LargerPanel => FormattableString.Invariant($"Replace it by {RatingA:0} A with {Spaces} spaces"),
        _ => throw new InvalidOperationException($"{Kind} is no upgrade."),
    };

    /// <summary>The job with it.</summary>
    public Job Applied(Job job) => Kind switch
    {
        UpgradeKind.Tandems => Changed(job, p => p with { Circuits = [.. p.Circuits.Select(c => Circuits.Contains(c.Id) ? c with { NewTandem = true } : c)] }),
        UpgradeKind.Subpanel => WithSubpanel(job),
        UpgradeKind.LargerPanel => WithLargerPanel(job),
        _ => throw new InvalidOperationException($"{Kind} is no upgrade."),
    };

    private Job Changed(Job job, Func<Panel, Panel> change) => job with { Panels = [.. job.Panels.Select(p => p.Id == PanelId ? change(p) : p)] };

    private Job WithSubpanel(Job job)
    {
        var full = job.Panels.First(p => p.Id == PanelId);
        var id = FreeId(job);
        var sub = new Panel { Id = id, Name = "Subpanel", Room = full.Room, At = full.At is { } at ? at with { X = at.X + Length.FromFeet(2) } : null, Wall = Beside(job, full), RatingA = Current.FromAmperes(RatingA), Spaces = Spaces, FedFrom = full.Id };
        var changed = Changed(job, p => p with { NoNewCircuits = true, Circuits = [.. p.Circuits.Select(c => Circuits.Contains(c.Id) ? c with { MovedTo = id } : c)] });
        return changed with { Panels = changed.Panels.Add(sub) };
    }

    private Job WithLargerPanel(Job job)
    {
        var changed = Changed(job, p => p with
        {
            Existing = false,
            RatingA = Current.FromAmperes(RatingA),
            Spaces = Spaces,
            TandemSpaces = 0,
            Make = null,
            Series = null,
            NoNewCircuits = false,
            Circuits = [.. p.Circuits.Select(c => c with { Space = null, Tandem = false, NewTandem = false })],
        });
        var isService = job.Panels.First(p => p.Id == PanelId).FedFrom is null;
        return isService ? changed with { Service = (job.Service ?? new ServiceWork()) with { Replaces = true, RatingA = null } } : changed;
    }

    private static string FreeId(Job job)
    {
        var taken = job.Panels.Select(p => p.Id).Concat(job.Equipment.Select(e => e.Id)).Concat(job.Levels.SelectMany(l => l.Rooms).SelectMany(r => r.Placed).Select(d => d.Id)).ToHashSet(StringComparer.Ordinal);
        return Enumerable.Range(2, taken.Count + 1).Select(n => $"P{n}").First(n => !taken.Contains(n));
    }

    // Two feet along the same wall, away from the nearer corner.
    private static WallSpot? Beside(Job job, Panel panel)
    {
        if (panel.Wall is not { } spot)
        {
            return null;
        }

        var apart = Length.FromFeet(2);
        var room = job.Levels.SelectMany(l => l.Rooms).First(r => r.Id == panel.Room);
        var side = SideLength(room, spot.Side);
        return spot with { Offset = spot.Offset + apart + apart <= side ? spot.Offset + apart : Length.Max(Length.Zero, spot.Offset - apart) };
    }

    private static Length SideLength(Room room, int side)
    {
        if (room.Size is { } size)
        {
            return side % 2 == 1 ? size.Width : size.Depth;
        }

        var (from, to) = (room.Corners[side - 1], room.Corners[side % room.Corners.Length]);
        return Length.Max((to.X - from.X).Abs(), (to.Y - from.Y).Abs());
    }
}
