using CsCheck;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase;

namespace Estimator.Engine.Tests.Purchase;

public sealed class PackChoiceTests
{
    private static readonly Gen<Offer[]> Offers = Gen.Select(Gen.Int[1, 12], Gen.Int[1, 500]).Select(o => new Offer("i", "s", o.Item1, Money.FromDollars(o.Item2), "")).Array[1, 4];

    [Fact]
    public void Cheapest_SmallNeeds_EqualsEveryCombinationTried() => Gen.Select(Gen.Int[1, 25], Offers).Sample(
        (need, offers) => Assert.Equal(BruteForce(need, offers), Cost(PackChoice.Cheapest(need, offers))), iter: 500);

    [Fact]
    public void Cheapest_MoreNeed_NeverCostsLess() => Gen.Select(Gen.Int[1, 300], Offers).Sample(
        (need, offers) => Assert.True(Cost(PackChoice.Cheapest(need, offers)) <= Cost(PackChoice.Cheapest(need + 1, offers))), iter: 300);

    [Fact]
    public void Cheapest_NoOffers_BuysNothing() => Assert.Empty(PackChoice.Cheapest(5, []));

    private static decimal Cost(IEnumerable<PackCount> packs) => packs.Sum(p => p.Count * p.Offer.Price.ToDollars());

    private static decimal BruteForce(int need, Offer[] offers)
    {
        decimal Best(int left, int from)
        {
            if (left <= 0)
            {
                return 0;
            }

            var best = decimal.MaxValue;
            for (var o = from; o < offers.Length; o++)
            {
                best = Math.Min(best, offers[o].Price.ToDollars() + Best(left - offers[o].PackSize, o));
            }

            return best;
        }

        return Best(need, 0);
    }
}
