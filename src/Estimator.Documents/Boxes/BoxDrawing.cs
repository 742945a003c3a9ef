using System.Collections.Immutable;
using Estimator.Engine;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Joints;

namespace Estimator.Documents.Boxes;

/// <summary>Where everything of a box card is drawn: cables at the left, splices in the middle, screws and leads at the right. Units of the picture.</summary>
public sealed record BoxDrawing
{
    private const int Row = 18;
    private const int Head = 26;
    private const int Top = 14;

    /// <summary>Height of the picture.</summary>
    public required int Height { get; init; }

    /// <summary>Each cable: its run and the line of its name.</summary>
    public required ImmutableArray<(int Run, int Y)> Cables { get; init; }

    /// <summary>Each conductor end: where it enters.</summary>
    public required ImmutableArray<(ConductorEnd End, int Joint, int Y)> Ends { get; init; }

    /// <summary>Each joint: where its dot stands.</summary>
    public required ImmutableArray<(Joint Joint, int Y)> Joints { get; init; }

    /// <summary>Each screw or lead.</summary>
    public required ImmutableArray<(Terminal Terminal, int Joint, int Y)> Terminals { get; init; }

    /// <summary>Each device: the line of its name.</summary>
    public required ImmutableArray<(int Device, int Y)> Devices { get; init; }

    /// <summary>The drawing of a box.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="box">A box of it.</param>
    public static BoxDrawing Of(JobEstimate estimate, Box box)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        ArgumentNullException.ThrowIfNull(box);
        var jointOf = box.Joints.SelectMany((j, i) => j.Ends.Select(e => (e, i))).ToDictionary(x => x.e, x => x.i);
        var cables = ImmutableArray.CreateBuilder<(int, int)>();
        var ends = ImmutableArray.CreateBuilder<(ConductorEnd, int, int)>();
        var left = Top;
        foreach (var run in jointOf.Keys.Select(e => e.Run).Distinct().Order())
        {
            cables.Add((run, left));
            left += Row;
            foreach (var conductor in estimate.Wiring.Runs[run].Conductors)
            {
                var end = new ConductorEnd(run, conductor.Colour);
                ends.Add((end, jointOf[end], left));
                left += Row;
            }

            left += Head - Row;
        }

        var devices = ImmutableArray.CreateBuilder<(int, int)>();
        var terminals = ImmutableArray.CreateBuilder<(Terminal, int, int)>();
        var right = Top;
        foreach (var device in box.Joints.SelectMany((j, i) => j.Terminals.Select(t => (Terminal: t, Joint: i))).GroupBy(t => t.Terminal.Device).OrderBy(g => g.Key))
        {
            devices.Add((device.Key, right));
            right += Row;
            foreach (var (terminal, joint) in device.OrderBy(t => t.Terminal.Name))
            {
                terminals.Add((terminal, joint, right));
                right += Row;
            }

            right += Head - Row;
        }

        return new BoxDrawing
        {
            Height = Math.Max(Math.Max(left, right), Top + Row * (box.Joints.Length + 1)),
            Cables = cables.ToImmutable(),
            Ends = ends.ToImmutable(),
            Devices = devices.ToImmutable(),
            Terminals = terminals.ToImmutable(),
            Joints = Spread(box.Joints, ends, terminals),
        };
    }

    // Each dot at the middle of what it joins, pushed down where it would touch the one above.
    private static ImmutableArray<(Joint, int)> Spread(
        ImmutableArray<Joint> joints, IReadOnlyCollection<(ConductorEnd End, int Joint, int Y)> ends, IReadOnlyCollection<(Terminal Terminal, int Joint, int Y)> terminals)
    {
        var wanted = joints.Select((_, i) => (int)ends.Where(e => e.Joint == i).Select(e => e.Y).Concat(terminals.Where(t => t.Joint == i).Select(t => t.Y)).DefaultIfEmpty(Top).Average()).ToList();
        var placed = new int[joints.Length];
        var above = 0;
        foreach (var i in Enumerable.Range(0, joints.Length).OrderBy(i => wanted[i]).ThenBy(i => i))
        {
            placed[i] = above = Math.Max(wanted[i], above + Row);
        }

        return [.. joints.Select((j, i) => (j, placed[i]))];
    }
}
