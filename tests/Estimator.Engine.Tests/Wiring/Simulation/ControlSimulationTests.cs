using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Wiring.Joints;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Engine.Tests.Wiring.Simulation;

/// <summary>
/// Every conductor followed from the breaker to the screw, by code of its own, for every position of every switch. CONTROLS sets how many control groups.
/// How three-way and four-way switches work: common practice, no source.
/// </summary>
public sealed class ControlSimulationTests
{
    private const int ControlsOfAHouse = 10;
    private const int Controls = 10_000;

    [Fact]
    public void Trace_OfRandomControls_LightsWhatItShould()
    {
        var count = int.TryParse(Environment.GetEnvironmentVariable("CONTROLS"), NumberStyles.None, CultureInfo.InvariantCulture, out var wanted) ? wanted : Controls;
        var problems = new ConcurrentQueue<string>();
        var seen = new ConcurrentDictionary<int, int>();
        Parallel.For(0, count / ControlsOfAHouse, n =>
        {
            var estimate = SmallJobs.Estimate(ControlHouses.Number(n, ControlsOfAHouse));
            foreach (var group in estimate.Controls.Groups)
            {
                seen.AddOrUpdate(group.Switches.Length, 1, (_, c) => c + 1);
            }

            foreach (var problem in estimate.Wiring.Circuits.SelectMany(c => new CircuitTester(estimate, c).Problems()).Take(3))
            {
                problems.Enqueue($"house {n}: {problem}");
            }
        });
        Assert.True(problems.IsEmpty, $"{problems.Count}\n{string.Join('\n', problems.Take(20))}");
        Assert.All(Enumerable.Range(1, 6), switches => Assert.True(seen.GetValueOrDefault(switches) >= count / 20, $"{switches} switches: {seen.GetValueOrDefault(switches)}"));
    }

    /// <summary>A wrong trace is found: two conductors change places in one box.</summary>
    [Theory]
    [InlineData(ConductorFunction.Hot, ConductorFunction.Neutral)]
    [InlineData(ConductorFunction.Hot, ConductorFunction.Switched)]
    [InlineData(ConductorFunction.Switched, ConductorFunction.Neutral)]
    [InlineData(ConductorFunction.Traveller, ConductorFunction.Switched)]
    [InlineData(ConductorFunction.Traveller, ConductorFunction.Neutral)]
    [InlineData(ConductorFunction.Hot, ConductorFunction.Ground)]
    [InlineData(ConductorFunction.Switched, ConductorFunction.Ground)]
    public void Trace_WithTwoConductorsExchanged_IsFoundWrong(ConductorFunction one, ConductorFunction other)
    {
        var tried = 0;
        for (var n = 0; n < 20; n++)
        {
            var estimate = SmallJobs.Estimate(ControlHouses.Number(n, ControlsOfAHouse));
            foreach (var (circuit, box) in estimate.Wiring.Circuits.SelectMany(c => c.Boxes.Select(b => (c, estimate.Wiring.Boxes[b]))))
            {
                if (Exchanged(box.Joints, one, other) is { } wrong)
                {
                    tried++;
                    Assert.NotEmpty(new CircuitTester(estimate, circuit, b => b == box ? wrong : b.Joints).Problems());
                }
            }
        }

        Assert.True(tried >= 5, $"{tried} boxes had both");
    }

    [Fact]
    public void Trace_WithOneSplicePulledApart_IsFoundWrong()
    {
        var estimate = SmallJobs.Estimate(ControlHouses.Number(1, ControlsOfAHouse));
        foreach (var (circuit, box) in estimate.Wiring.Circuits.SelectMany(c => c.Boxes.Select(b => (c, estimate.Wiring.Boxes[b]))))
        {
            for (var j = 0; j < box.Joints.Length; j++)
            {
                var joint = box.Joints[j];
                if (joint.Ends.Length > 0 && joint.Ends.Length + joint.Terminals.Length > 1)
                {
                    var wrong = box.Joints.SetItem(j, joint with { Ends = joint.Ends[1..] });
                    Assert.NotEmpty(new CircuitTester(estimate, circuit, b => b == box ? wrong : b.Joints).Problems());
                }
            }
        }
    }

    [Fact]
    public void White_InACableWithoutNeutral_IsMarkedAgain()
    {
        var job = SmallJobs.OneRoom(RoomKind.Laundry) with
        {
            Equipment = [new Equipment { Id = "E1", Kind = EquipmentKind.WaterHeater, Name = "Water heater", Room = "R1", Wall = new WallSpot(2, Length.FromFeet(3)), Volts = 240, LoadVa = Power.FromVoltAmperes(4500), Connection = Connection.HardWired }],
        };
        var estimate = SmallJobs.Estimate(job);
        // NEC 200.7(C)(1): a white conductor of a cable serves as a hot one where it is marked at its ends.
        Assert.Equal(InsulationColour.White, Assert.Single(Assert.Single(estimate.Wiring.Runs).Conductors, c => c.ReMarked).Colour);
    }

    // Null where the box has not both. A switch alone between feed and leg works either way round, so its feed goes on.
    private static IReadOnlyList<Joint>? Exchanged(ImmutableArray<Joint> joints, ConductorFunction one, ConductorFunction other)
    {
        var (a, b) = (joints.FirstOrDefault(j => j.Function == one && j.Ends.Length > 0), joints.FirstOrDefault(j => j.Function == other && j.Ends.Length > 0));
        if (a is null || b is null || a.Conductors < 2 || b.Conductors < 2 || (one is ConductorFunction.Hot && other is ConductorFunction.Switched && a.Ends.Length + b.Ends.Length == 2))
        {
            return null;
        }

        var (mine, theirs) = (a.Ends[0], b.Ends[0]);
        return [.. joints.Select(j => j == a ? a with { Ends = a.Ends.Replace(mine, theirs) } : j == b ? b with { Ends = b.Ends.Replace(theirs, mine) } : j)];
    }
}
