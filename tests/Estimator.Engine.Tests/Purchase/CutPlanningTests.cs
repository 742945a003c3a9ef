using CsCheck;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Purchase;

public sealed class CutPlanningTests
{
    private const long Steps = 20_000_000;

    private static readonly Offer[] Coils = [Coil(25, 14), Coil(50, 24), Coil(100, 43), Coil(250, 95), Coil(1000, 360)];

    private static readonly Length Trim = Length.FromInches(1);

    private static readonly Gen<StockPiece[]> Shelf = Gen.Int[10, 900].Array[0, 2].Select(inches => inches.Select((x, i) => new StockPiece("c", $"reel {i}", Length.FromInches(x))).ToArray());

    [Fact]
    public void Plan_AnyRuns_IsFeasibleAndAddsUp() => Gen.Select(Gen.Int[12, 1100].Array[1, 40], Shelf).Sample(
        (inches, shelf) =>
        {
            var plan = CutPlanning.For("c", Runs(inches), Coils, shelf, Steps);
            Assert.Empty(Problems(plan, inches, shelf));
            Assert.True(plan.LowerBound <= plan.Cost);
            Assert.Equal(plan.Bought + plan.FromShelf, plan.InPieces + plan.Kept + plan.Wasted);
            Assert.All(plan.Coils, c => Assert.Equal(c.Length - c.Left, c.Marks[^1]));
        },
        iter: 300);

    [Fact]
    public void Plan_FewRuns_CostsTheLeastOfEveryWayTried() => Gen.Select(Gen.Int[60, 1190].Array[1, 6], Shelf, Gen.Int[1, 5]).Sample(
        (inches, shelf, offers) =>
        {
            var plan = CutPlanning.For("c", Runs(inches), Coils[^offers..], shelf, Steps);
            var least = CuttingCheck.LeastPrice(Stocks(Coils[^offers..], shelf), [.. inches.Select(x => Units(x + 1))]);
            Assert.Equal(least, plan.Cost.ToDollars());
            Assert.True(plan.LowerBound.ToDollars() <= least);
            Assert.Empty(Problems(plan, inches, shelf));
        },
        iter: 1000);

    // By the foot one length is bought for all pieces that are, in whole feet: within a foot of the least of every way of dividing.
    [Fact]
    public void Plan_CableByTheFootToo_IsWithinAFootOfTheLeast() => Gen.Select(Gen.Int[60, 1190].Array[1, 5], Gen.Int[50, 120]).Sample(
        (inches, cents) =>
        {
            var foot = Coil(1, cents / 100m);
            var plan = CutPlanning.For("c", Runs(inches), [.. Coils[1..4], foot], [], Steps);
            var least = Enumerable.Range(0, 1 << inches.Length).Min(set =>
                (foot.Price.ToDollars() * decimal.Ceiling(inches.Where((_, i) => (set >> i & 1) == 1).Sum(x => x + 1) / 12m))
                + CuttingCheck.LeastPrice(Stocks(Coils[1..4], []), [.. inches.Where((_, i) => (set >> i & 1) == 0).Select(x => Units(x + 1))]));
            Assert.InRange(plan.Cost.ToDollars(), least, least + foot.Price.ToDollars());
            Assert.True(plan.LowerBound.ToDollars() <= least);
            Assert.All(plan.Coils, c => Assert.True(c.Left >= Length.Zero));
            Assert.Equal(inches.Length, plan.Coils.Sum(c => c.Pieces.Length));
        },
        iter: 300);

    [Fact]
    public void Plan_ByTheFootAlone_BuysOneLengthInWholeFeet()
    {
        var coil = CutPlanning.For("c", Runs([1190, 650]), [Coil(1, 2)], [], Steps).Coils.Single();
        Assert.Equal((154, 308m), (coil.Packs, coil.Price.ToDollars()));
    }

    [Fact]
    public void Plan_SameRuns_IsTheSameWhateverTheirOrder() => Gen.Int[12, 1100].Array[2, 30].Sample(
        inches => Assert.Equal(Text(CutPlanning.For("c", Runs(inches), Coils, [], Steps)), Text(CutPlanning.For("c", Runs(inches).Reverse(), [.. Coils.Reverse()], [], Steps))), iter: 100);

    [Fact]
    public void Plan_MoreOnTheShelf_NeverCostsMore() => Gen.Select(Gen.Int[60, 1100].Array[1, 12], Shelf).Sample(
        (inches, shelf) => Assert.True(CutPlanning.For("c", Runs(inches), Coils, shelf, Steps).LowerBound <= CutPlanning.For("c", Runs(inches), Coils, [], Steps).Cost), iter: 200);

    [Fact]
    public void Plan_RunLongerThanAnyCoil_IsNamed() => Assert.Single(CutPlanning.For("c", Runs([13_000]), Coils, [], Steps).TooLong);

    [Fact]
    public void Plan_RunThatOnlyTheShelfHolds_TakesItAndClaimsNothing()
    {
        var plan = CutPlanning.For("c", Runs([13_000, 120]), Coils, [new StockPiece("c", "reel", Length.FromFeet(1100))], Steps);
        Assert.Equal(("reel", 2, 0m), (plan.Coils.Single().Shelf!.Label, plan.Coils[0].Pieces.Length, plan.Cost.ToDollars()));
        Assert.Empty(plan.TooLong);
    }

    // A piece and its trim fill a coil of 25 ft to the last sixteenth: one sixteenth more does not fit.
    [Theory]
    [InlineData(299, 1)]
    [InlineData(299.0625, 2)]
    public void Plan_PieceAndTrim_FillACoilExactly(double inches, int coils)
    {
        CutPiece[] pieces = [new("a", Length.FromInches((decimal)inches), Trim), new("b", Length.FromInches(299), Trim)];
        Assert.Equal(coils == 1 ? [25, 25] : new[] { 25, 50 }, CutPlanning.For("c", pieces, [Coil(25, 14), Coil(50, 40)], [], Steps).Coils.Select(c => c.Offer!.PackSize).Order());
    }

    [Fact]
    public void Marks_OfCoil_CountPiecesAndTrims()
    {
        var coil = CutPlanning.For("c", Runs([120, 100]), [Coil(25, 14)], [], Steps).Coils.Single();
        Assert.Equal(["10' 1\"", "18' 6\""], coil.Marks.Select(m => m.ToString()));
        Assert.Equal("6' 6\"", coil.Left.ToString());
    }

    private static IEnumerable<string> Problems(CutPlan plan, int[] inches, StockPiece[] shelf) => CuttingCheck.Problems(
        Stocks(Coils, shelf), inches.Select(x => Units(x + 1)),
        [.. plan.Coils.Select(c => (c.Offer is null ? Coils.Length + Array.IndexOf(shelf, c.Shelf) : Array.IndexOf(Coils, c.Offer), (IReadOnlyList<long>)[.. c.Pieces.Select(p => (p.Length + p.Trim).ToNanometres())]))],
        (long)plan.Cost.ToDollars());

    private static List<(long Length, long Price, int? Count)> Stocks(Offer[] offers, StockPiece[] shelf) =>
        [.. offers.Select(o => (Units(12 * o.PackSize), (long)o.Price.ToDollars(), (int?)null)), .. shelf.Select(s => (s.Length.ToNanometres(), 0L, (int?)1))];

    private static string Text(CutPlan plan) => string.Join('\n', plan.Coils.Select(c => $"{c.Length}: {string.Join(' ', c.Pieces.Select(p => p.Run))}"));

    private static long Units(decimal inches) => Length.FromInches(inches).ToNanometres();

    private static CutPiece[] Runs(int[] inches) => [.. inches.Select((x, i) => new CutPiece($"r{i}", Length.FromInches(x), Trim))];

    private static Offer Coil(int feet, decimal price) => new("c", "s", feet, Money.FromDollars(price), "");
}
