using System.Collections.Immutable;
using CsCheck;
using Estimator.Engine.Explanations;
using Estimator.Engine.Panels;

namespace Estimator.Engine.Tests.Panels;

/// <summary>Schedules of small panels against every way to put the breakers into the spaces, tried out here one by one.</summary>
public sealed class PanelArrangingTests
{
    private static readonly Gen<(int Spaces, (int Poles, int Load)[] Fresh, (int Space, int Load)[] There)> Cabinets =
        from rows in Gen.Int[1, 4]
        from fresh in Gen.Select(Gen.Int[1, 2], Gen.Int[0, 3000]).Array[0, 5]
        from there in Gen.Select(Gen.Int[1, 8], Gen.Int[0, 3000]).Array[0, 2]
        select (2 * rows, fresh, there.Where(t => t.Item1 <= 2 * rows).DistinctBy(t => t.Item1).ToArray());

    [Fact]
    public void Arrange_AnySmallCabinet_IsAsEvenAsTheBestOfAllPlacings() => Cabinets.Sample(c =>
    {
        var schedule = Arrange(c.Spaces, 0, [.. c.There.Select((t, i) => There($"t{i}", t.Load, t.Space)), .. c.Fresh.Select((f, i) => Fresh($"f{i}", f.Poles, f.Load))]);
        if (schedule.Unplaced.IsEmpty)
        {
            var taken = c.There.Select(t => t.Space).ToHashSet();
            Assert.Equal(Best(c.Spaces, taken, [.. c.Fresh.OrderByDescending(f => f.Poles)], 0, c.There.Sum(t => IsOnA(t.Space) ? t.Load : -t.Load)), schedule.ImbalanceVa.Value);
            Assert.True(schedule.Proven);
        }
    });

    [Fact]
    public void Arrange_AnyCabinet_EachPoleHasASpaceOfItsOwnAndWhatIsStatedStays() => Cabinets.Sample(c =>
    {
        var schedule = Arrange(c.Spaces, 0, [.. c.There.Select((t, i) => There($"t{i}", t.Load, t.Space)), .. c.Fresh.Select((f, i) => Fresh($"f{i}", f.Poles, f.Load))]);
        var spaces = schedule.Breakers.SelectMany(b => b.Spaces).ToList();
        Assert.Equal(spaces.Distinct().Count(), spaces.Count);
        Assert.All(spaces, s => Assert.InRange(s, 1, c.Spaces));
        Assert.Equal(c.There.Length + c.Fresh.Length, schedule.Breakers.Length + schedule.Unplaced.Length);
        Assert.All(c.There.Select((t, i) => (t, i)), x => Assert.Equal([x.t.Space], schedule.Breakers.Single(b => b.Breaker.Id == $"t{x.i}").Spaces));
    });

    // Two-pole breakers stand in one column over two rows, which are on different legs. Source: common practice of panel buses, no source.
    [Fact]
    public void Arrange_TwoPole_TakesTwoRowsOfOneColumnAndBothLegs()
    {
        var placed = Assert.Single(Arrange(4, 0, [Fresh("range", 2, 12_000)]).Breakers);
        Assert.Equal((PanelLeg.Both, 2), (placed.Leg, placed.Spaces[1] - placed.Spaces[0]));
        Assert.Equal(0m, Arrange(4, 0, [Fresh("range", 2, 12_000)]).ImbalanceVa.Value);
    }

    [Theory]
    [InlineData(0, 2)]
    [InlineData(1, 1)]
    [InlineData(2, 0)]
    public void Arrange_MoreCircuitsThanSpaces_TandemsTakeTwoWhereTheyMay(int tandemSpaces, int left)
    {
        var schedule = Arrange(4, tandemSpaces, [.. Enumerable.Range(0, 6).Select(i => Fresh($"c{i}", 1, 500))]);
        Assert.Equal(left, schedule.Unplaced.Length);
        Assert.Equal(2 * tandemSpaces, schedule.Breakers.Count(b => b.Half));
    }

    [Fact]
    public void Arrange_TwoStatedForOneSpace_SaysSoAndPlacesBoth()
    {
        var schedule = Arrange(4, 0, [There("a", 100, 3), There("b", 100, 3)]);
        Assert.Equal(2, schedule.Breakers.Length);
        Assert.Contains(schedule.Notes, n => n.Contains("read the door again", StringComparison.Ordinal));
    }

    // Two spaces are left and nobody read the door: a two-pole breaker is not refused for an order that was only assumed.
    [Fact]
    public void Arrange_UnreadDirectory_LeavesATwoPoleItsColumn()
    {
        var there = Enumerable.Range(1, 6).Select(i => (Func<PageWriter, BreakerLoad>)(page => new BreakerLoad($"c{i}", $"c{i}", BreakerOrigin.Existing, 15, 1, page.Constant("No load", 0, Unit.VoltAmperes))));
        Assert.Empty(Arrange(8, 0, [.. there, Fresh("feeder", 2, 5000)]).Unplaced);
    }

    private static PanelSchedule Arrange(int spaces, int tandemSpaces, ImmutableArray<Func<PageWriter, BreakerLoad>> breakers)
    {
        var page = new PageWriter(1);
        return PanelArranging.Arrange(page, "P", spaces, tandemSpaces, [.. breakers.Select(b => b(page))]);
    }

    private static Func<PageWriter, BreakerLoad> Fresh(string id, int poles, int load) =>
        page => new BreakerLoad(id, id, BreakerOrigin.Circuit, 20, poles, page.Given($"$.{id}", id, load, Unit.VoltAmperes));

    private static Func<PageWriter, BreakerLoad> There(string id, int load, int space) =>
        page => new BreakerLoad(id, id, BreakerOrigin.Existing, 20, 1, page.Given($"$.{id}", id, load, Unit.VoltAmperes), space);

    private static bool IsOnA(int space) => (space + 1) / 2 % 2 == 1;

    private static decimal Best(int spaces, HashSet<int> taken, (int Poles, int Load)[] left, int next, decimal difference)
    {
        if (next == left.Length)
        {
            return Math.Abs(difference);
        }

        var best = decimal.MaxValue;
        for (var s = 1; s <= spaces; s++)
        {
            int[] wanted = left[next].Poles == 1 ? [s] : [s, s + 2];
            if (wanted.All(w => w <= spaces && !taken.Contains(w)))
            {
                taken.UnionWith(wanted);
                best = Math.Min(best, Best(spaces, taken, left, next + 1, difference + (left[next].Poles == 2 ? 0 : IsOnA(s) ? left[next].Load : -left[next].Load)));
                taken.ExceptWith(wanted);
            }
        }

        return best;
    }
}
