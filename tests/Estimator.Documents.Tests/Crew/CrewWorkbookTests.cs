using Estimator.Documents.Crew;

namespace Estimator.Documents.Tests.Crew;

/// <summary>The crew's sheets hold every run, device, box and test, and their sums follow what is typed into them.</summary>
public sealed class CrewWorkbookTests(RecalculatedBooks books)
{
    private const decimal Near = 0.0001m;

    [Theory]
    [InlineData("crew_basement")]
    [InlineData("crew_house")]
    [InlineData("crew_service")]
    public void Recalculated_PullList_AddsUpToTheRuns(string book)
    {
        var estimate = books.Expected[book];
        var runs = PulledRun.Of(estimate, new CrewLabels(estimate)).ToList();
        Assert.InRange(Feet(book) - runs.Sum(r => r.Length.ToFeet()), -Near, Near);
        Assert.Equal(runs.Select(r => r.Length.ToString()), Enumerable.Range(5, runs.Count).Select(r => books.Cell(book, "Pull list", r, 6)));
    }

    [Fact]
    public void TypedLength_MovesTheSum() =>
        Assert.InRange(Feet("crew_house_changed") - Feet("crew_house") - (100m - books.Number("crew_house", "Pull list", 5, 7)), -Near, Near);

    [Theory]
    [InlineData("crew_basement")]
    [InlineData("crew_house")]
    [InlineData("crew_service")]
    public void Sheets_HaveARowForEachThing(string book)
    {
        var estimate = books.Expected[book];
        Assert.Equal(estimate.Layout.Devices.Length + estimate.Layout.Equipment.Length, Ticks(book, "Devices", 1));
        Assert.Equal(estimate.Wiring.Boxes.Length, Ticks(book, "Boxes", 1));
        Assert.Equal(KitLine.Of(estimate).Count(), Ticks(book, "Tools", 1));
        Assert.Equal(TestLine.Of(estimate, new CrewLabels(estimate)).Count(), Ticks(book, "Tests", 7));
        Assert.Equal(estimate.Purchase.Cuts.Sum(c => c.Coils.Sum(x => x.Pieces.Length)), Ticks(book, "Cut plan", 1));
    }

    [Fact]
    public void Kit_FollowsWhatIsInTheJob()
    {
        var (basement, service) = (KitLine.Of(SampleEstimates.Basement).ToList(), KitLine.Of(SampleEstimates.Service).ToList());
        Assert.All(basement.Concat(service), l => Assert.True(l.Count > 0 && l.Because.Length > 0 && l.Basis.Length > 0));
        Assert.DoesNotContain(basement, l => l.Name.StartsWith("Ground rod", StringComparison.Ordinal));
        Assert.Contains(service, l => l.Name.StartsWith("Ground rod", StringComparison.Ordinal));
        Assert.Contains(service, l => l.Name.StartsWith("Arc-rated", StringComparison.Ordinal));
        Assert.All(basement.Where(l => l.Because == "takeoff"), l => Assert.Contains(SampleEstimates.Basement.Takeoff.Lines, t => t.Description == l.Name && decimal.Ceiling(t.Quantity.Value) == l.Count));
    }

    // NEC chapter 9 table 8: 12 AWG solid copper, 1.93 ohm a thousand feet; 14 AWG, 3.07.
    [Theory]
    [InlineData("12", "1.93")]
    [InlineData("14", "3.07")]
    public void Tests_GroundReading_IsLengthTimesTheTable(string wire, string ohms)
    {
        var estimate = SampleEstimates.House;
        foreach (var circuit in estimate.Wiring.Circuits.Where(c => c.Wire.ToString() == wire))
        {
            var path = Engine.Wiring.Circuits.GroundPath.Of(estimate.Wiring, circuit)!;
            Assert.Equal(decimal.Ceiling(path.Length.ToFeet() * BookCells.Number(ohms) / 10) / 100, path.Ohms);
            Assert.True(path.Length.ToFeet() <= circuit.Runs.Sum(r => estimate.Wiring.Runs[r].Total.AsLength().Value.ToFeet()) + Near);
            Assert.Contains(path.FarthestBox, circuit.Boxes);
        }
    }

    [Fact]
    public void Tests_EveryProtection_IsTriedWhereItIs()
    {
        var tests = TestLine.Of(SampleEstimates.House, new CrewLabels(SampleEstimates.House)).ToList();
        var labels = new CrewLabels(SampleEstimates.House);
        foreach (var (circuit, i) in SampleEstimates.House.Wiring.Circuits.Select((c, i) => (c, i)))
        {
            var own = tests.Where(t => t.On == labels.Circuit(i)).ToList();
            Assert.Equal(circuit.Protection is Engine.Panels.Protection.ArcFault or Engine.Panels.Protection.DualFunction, own.Any(t => t.Test.StartsWith("Arc-fault", StringComparison.Ordinal)));
            Assert.Equal(circuit.Poles == 2, own.Any(t => t.Expected == "228 to 252 V"));
            Assert.Contains(own, t => t.Expected == FormattableString.Invariant($"{circuit.BreakerA.Value:0} A, {circuit.Wire} AWG"));
        }
    }

    [Fact]
    public void Tables_OfTheCrew_AreCitedRowByRow() =>
        Assert.All(CrewTable.Kit.Rows.Concat(CrewTable.Tests.Rows), r => Assert.True(r.Label.Length > 0 && CrewTable.Basis(r).Length > 0, r.Key));

    [Fact]
    public void Write_TheSameEstimateTwice_GivesTheSameBytes() => Assert.Equal(books["crew_basement"], CrewWorkbook.Write(SampleEstimates.Basement, Letterhead.Blank));

    private decimal Feet(string book)
    {
        var (row, column) = BookCells.Named(books[book], "PulledFeet");
        return books.Number(book, "Pull list", row, column);
    }

    private int Ticks(string book, string sheet, int column) => books.Rows(book, sheet).Count(r => books.Cell(book, sheet, r, column) == "☐");
}
