using System.Collections.Immutable;
using CsCheck;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase.Suppliers;

namespace Estimator.Engine.Tests.Purchase.Suppliers;

/// <summary>Dividing what is bought among suppliers, against every way written out.</summary>
public sealed class SupplyChoosingTests
{
    private static readonly Gen<SupplyTable> Small =
        from suppliers in Gen.Int[1, 3]
        from terms in Gen.Select(Gen.Int[0, 60], Gen.Int[0, 200], Gen.Int[0, 400], (delivery, minimum, free) => (delivery, minimum, free)).Array[suppliers]
        from costs in Gen.Int[-2, 120].Array[suppliers].Array[1, 6]
        select Table(terms, costs);

    // Every owner of every item, one by one: no set, no bound, and charges worked out anew.
    [Fact]
    public void Split_SmallCases_IsTheCheapestOfAllWays() => Small.Sample(table =>
    {
        var choice = SupplyChoosing.Split(table);
        Assert.Equal(Cheapest(table), choice.Total.ToDollars());
        Assert.True(choice.Proven);
        Assert.Equal(table.Items.Except(table.NobodyHas), choice.Orders.SelectMany(o => o.Items).Order(StringComparer.Ordinal));
    }, iter: 3000);

    [Fact]
    public void Split_ManyItems_NeverAboveOneSupplierNorBelowItsBound() => (
        from suppliers in Gen.Int[2, 5]
        from terms in Gen.Select(Gen.Int[0, 90], Gen.Int[0, 900], Gen.Int[0, 3000], (delivery, minimum, free) => (delivery, minimum, free)).Array[suppliers]
        from costs in Gen.Int[20, 60].Array[suppliers].Array[60]
        select Table(terms, costs)).Sample(table =>
    {
        var (choice, single) = (SupplyChoosing.Split(table), SupplyChoosing.Single(table));
        Assert.All(single.Where(s => s.Missing.IsEmpty), s => Assert.True(choice.Total <= s.Total));
        Assert.True(choice.LowerBound <= choice.Total);
        // What the bound leaves open is at most the deliveries of all suppliers: up to 450 of about 2,000.
        Assert.True(choice.LowerBound.ToDollars() >= choice.Total.ToDollars() * 0.75m, $"{choice.LowerBound} of {choice.Total}");
    }, iter: 30);

    // By hand: A asks 100 + 40, B asks 90 + 60. Bare goods: A for the second, B for the first, 130, with two deliveries of 20 each 170. All from A 140 + 20 = 160, from B 150 with free delivery from 150.
    [Fact]
    public void Split_FreeDelivery_KeepsTheOrderTogether()
    {
        var table = Table([(20, 0, 0), (20, 0, 150)], [[100, 90], [40, 60]]);
        var choice = SupplyChoosing.Split(table);
        Assert.Equal(("S1", 150m, 0m), (Assert.Single(choice.Orders).Supplier, choice.Total.ToDollars(), choice.Orders[0].Delivery.ToDollars()));
    }

    // A minimum of 100 for goods of 30: 70 are filled up where there is no other supplier, and nothing where there is one at 60.
    [Fact]
    public void Split_OrderBelowTheMinimum_IsFilledUpOrGoesElsewhere()
    {
        var alone = Assert.Single(SupplyChoosing.Split(Table([(5, 100, 0)], [[30]])).Orders);
        Assert.Equal((30m, 70m, 5m, 105m), (alone.Goods.ToDollars(), alone.FillUp.ToDollars(), alone.Delivery.ToDollars(), alone.Total.ToDollars()));
        Assert.Equal(60m, SupplyChoosing.Split(Table([(5, 100, 0), (0, 0, 0)], [[30, 60]])).Total.ToDollars());
    }

    [Fact]
    public void Split_ItemThatNobodyHas_IsMissingAndNotFree()
    {
        var table = Table([(0, 0, 0), (0, 0, 0)], [[10, -1], [-1, -1]]);
        Assert.Equal(["I1"], SupplyChoosing.Split(table).Missing);
        Assert.Equal([("S0", 1), ("S1", 2)], SupplyChoosing.Single(table).Select(c => (c.Orders.IsEmpty ? "S1" : c.Orders[0].Supplier, c.Missing.Length)));
    }

    // 105 is 5% above 100, and 106 is not within 5%.
    [Fact]
    public void Preferred_WithinAPercentage_StaysThere()
    {
        var table = Table([(0, 0, 0), (0, 0, 0)], [[105, 100], [106, 100], [7, -1]]);
        var choice = SupplyChoosing.Preferred(table, "S0", Percent.FromHundredths(5));
        Assert.Equal(["S0", "S1", "S0"], table.Items.Select(choice.SupplierOf));
    }

    [Fact]
    public void Split_ElevenSuppliers_StatesABoundThatHolds()
    {
        var table = Table([.. Enumerable.Repeat((10, 0, 0), 11)], [.. Enumerable.Range(0, 11).Select(i => Enumerable.Range(0, 11).Select(s => s == i ? 50 : 70).ToArray())]);
        var choice = SupplyChoosing.Split(table);
        Assert.Equal((550m, false), (choice.LowerBound.ToDollars(), choice.Proven));
    }

    private static decimal Cheapest(SupplyTable table)
    {
        var wanted = Enumerable.Range(0, table.Items.Length).Where(i => table.Costs[i].Any(c => c is not null)).ToArray();
        var (best, ways) = (decimal.MaxValue, (int)Math.Pow(table.Terms.Length, wanted.Length));
        for (var way = 0; way < ways; way++)
        {
            var (rest, sums, used, possible) = (way, new decimal[table.Terms.Length], new bool[table.Terms.Length], true);
            foreach (var i in wanted)
            {
                var s = rest % table.Terms.Length;
                rest /= table.Terms.Length;
                possible &= table.Costs[i][s] is not null;
                sums[s] += table.Costs[i][s]?.ToDollars() ?? 0;
                used[s] = true;
            }

            var cost = 0m;
            for (var s = 0; s < sums.Length && possible; s++)
            {
                var value = Math.Max(sums[s], table.Terms[s].Minimum.ToDollars());
                cost += used[s] ? value + (table.Terms[s].FreeFrom is { } free && value >= free.ToDollars() ? 0 : table.Terms[s].Delivery.ToDollars()) : 0;
            }

            best = possible ? Math.Min(best, cost) : best;
        }

        return best;
    }

    private static SupplyTable Table((int Delivery, int Minimum, int Free)[] terms, int[][] costs) => new(
        [.. costs.Select((_, i) => $"I{i}")],
        [.. terms.Select((t, s) => new SupplierTerms($"S{s}", Money.FromDollars(t.Delivery), Money.FromDollars(t.Minimum), t.Free == 0 ? null : Money.FromDollars(t.Free)))],
        [.. costs.Select(row => row.Select(c => c < 0 ? (Money?)null : Money.FromDollars(c)).ToImmutableArray())]);
}
