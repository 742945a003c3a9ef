using CsCheck;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase;

namespace Estimator.Engine.Tests.Purchase;

public sealed class CutPlanningTests
{
    private static readonly Offer[] Coils = [Coil(25, 14), Coil(50, 24), Coil(100, 43), Coil(250, 95), Coil(1000, 360)];

    private static readonly Gen<int[]> Pieces = Gen.Int[12, 1100].Array[1, 40];

    [Fact]
    public void Plan_AnyRuns_CutsEachOnceAndFits() => Pieces.Sample(
        inches =>
        {
            var plan = CutPlanning.For("c", Runs(inches), Coils);
            Assert.Equal(Runs(inches).Select(r => r.Run).Order(), plan.Coils.SelectMany(c => c.Pieces).Select(p => p.Run).Order());
            Assert.All(plan.Coils, c => Assert.True(c.Pieces.Sum(p => p.Length.ToInches()) <= 12m * c.Offer.PackSize));
            Assert.Equal(plan.Cost.ToDollars(), plan.Coils.Sum(c => c.Offer.Price.ToDollars()));
            Assert.True(plan.LowerBound <= plan.Cost);
            Assert.True(plan.LowerBound.ToDollars() <= plan.Coils.Sum(c => c.Offer.Price.ToDollars()));
        },
        iter: 300);

    [Fact]
    public void Plan_FewRuns_EqualsEveryDivisionTried() => Gen.Int[100, 700].Array[1, 6].Sample(
        inches => Assert.Equal(BruteForce([.. inches.OrderDescending()], [], 0), CutPlanning.For("c", Runs(inches), Coils).Cost.ToDollars()), iter: 200);

    [Fact]
    public void Plan_RunLongerThanAnyCoil_IsNamed() => Assert.Single(CutPlanning.For("c", Runs([13_000]), Coils).TooLong);

    private static decimal BruteForce(int[] pieces, List<int> coils, int next)
    {
        if (next == pieces.Length)
        {
            return coils.Sum(used => Coils.Where(c => 12 * c.PackSize >= used).Min(c => c.Price.ToDollars()));
        }

        var best = decimal.MaxValue;
        for (var c = 0; c <= coils.Count; c++)
        {
            if (c < coils.Count && coils[c] + pieces[next] > 12_000)
            {
                continue;
            }

            List<int> tried = [.. coils];
            if (c < coils.Count)
            {
                tried[c] += pieces[next];
            }
            else
            {
                tried.Add(pieces[next]);
            }

            best = Math.Min(best, BruteForce(pieces, tried, next + 1));
        }

        return best;
    }

    private static CutPiece[] Runs(int[] inches) => [.. inches.Select((x, i) => new CutPiece($"r{i}", Length.FromInches(x)))];

    private static Offer Coil(int feet, decimal price) => new("c", "s", feet, Money.FromDollars(price), "");
}
