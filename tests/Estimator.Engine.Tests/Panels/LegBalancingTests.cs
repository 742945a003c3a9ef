using CsCheck;
using Estimator.Engine.Panels;

namespace Estimator.Engine.Tests.Panels;

/// <summary>The division of loads between two legs against every division there is, counted out here.</summary>
public sealed class LegBalancingTests
{
    private static readonly Gen<(long[] Loads, long Fixed, int Room)> Panels =
        from loads in Gen.Long[0, 4000].Array[0, 11]
        from start in Gen.Long[-6000, 6000]
        from room in Gen.Int[0, 4]
        select (loads, start, room);

    [Fact]
    public void Split_AnySmallPanel_IsTheBestOfAllDivisions() => Panels.Sample(p =>
    {
        var most = (p.Loads.Length + 1) / 2 + p.Room;
        var least = Math.Max(0, p.Loads.Length - most);
        var split = LegBalancing.Split(p.Loads, p.Fixed, least, Math.Min(most, p.Loads.Length));

        Assert.Equal(Best(p.Loads, p.Fixed, least, most), split.ImbalanceVa);
        Assert.Equal(split.ImbalanceVa, split.LowerBoundVa);
        Assert.Equal(split.ImbalanceVa, Math.Abs(p.Fixed + p.Loads.Select((l, i) => split.OnA[i] ? l : -l).Sum()));
        Assert.InRange(split.OnA.Count(x => x), least, most);
    });

    [Fact]
    public void Split_OrderOfTheLoads_ChangesNoImbalance() => Panels.Sample(p => Assert.Equal(
        LegBalancing.Split(p.Loads, p.Fixed, 0, p.Loads.Length).ImbalanceVa, LegBalancing.Split([.. p.Loads.Reverse()], p.Fixed, 0, p.Loads.Length).ImbalanceVa));

    // 20 x 1500, 10 x 640, 1210, 940 and 1200 VA, 39,750 VA in all: too many for counting out, few enough kinds to be followed whole.
    [Fact]
    public void Split_AFullPanelOfDwellingLoads_IsProvenAtOnce()
    {
        long[] loads = [.. Enumerable.Repeat(1500L, 20), .. Enumerable.Repeat(640L, 10), 1210, 940, 1200];
        var split = LegBalancing.Split(loads, 0, 0, loads.Length);
        Assert.Equal(split.ImbalanceVa, split.LowerBoundVa);
        Assert.InRange(split.ImbalanceVa, 0, 100);
    }

    [Fact]
    public void Split_FortyUnlikeLoads_IsProven()
    {
        long[] loads = [.. Enumerable.Range(0, 40).Select(i => 101L + 7919L * i % 4001)];
        var split = LegBalancing.Split(loads, 0, 0, loads.Length);
        Assert.Equal(split.LowerBoundVa, split.ImbalanceVa);
        Assert.InRange(split.ImbalanceVa, 0, 1);
    }

    // Too great to count exactly: the answer is still a division, and its bound says no more than is known.
    [Fact]
    public void Split_GreatUnlikeLoads_StaysWithinItsBound()
    {
        long[] loads = [.. Enumerable.Range(0, 40).Select(i => 1_000_003L + 7919L * i % 4001)];
        var split = LegBalancing.Split(loads, 0, 20, 20);
        Assert.True(split.LowerBoundVa <= split.ImbalanceVa);
        Assert.InRange(split.ImbalanceVa, 0, 1_000_000);
    }

    private static long Best(long[] loads, long start, int least, int most)
    {
        var best = long.MaxValue;
        for (var set = 0; set < 1 << loads.Length; set++)
        {
            var onA = System.Numerics.BitOperations.PopCount((uint)set);
            if (onA >= least && onA <= most)
            {
                var difference = start;
                for (var i = 0; i < loads.Length; i++)
                {
                    difference += (set >> i & 1) == 1 ? loads[i] : -loads[i];
                }

                best = Math.Min(best, Math.Abs(difference));
            }
        }

        return best;
    }
}
