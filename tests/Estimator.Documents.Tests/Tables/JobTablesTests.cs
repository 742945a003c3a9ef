using System.Globalization;
using CsvHelper;
using Estimator.Documents.Crew;
using Estimator.Documents.Tables;
using Estimator.Documents.Tests.Workbooks;
using Estimator.Engine;
using Estimator.Engine.Payments;
using Estimator.TestKit;

namespace Estimator.Documents.Tests.Tables;

/// <summary>Each table as CSV holds each row of the estimate, and text that no spreadsheet takes for a formula.</summary>
public sealed class JobTablesTests
{
    public static TheoryData<JobTable> Tables => [.. Enum.GetValues<JobTable>()];

    [Theory]
    [MemberData(nameof(Tables))]
    public void Write_Basement_HasARowForEachThing(JobTable table)
    {
        var e = SampleEstimates.Basement;
        var expected = table switch
        {
            JobTable.Takeoff => e.Takeoff.Lines.Length,
            JobTable.Labor => e.Labor.Lines.Length,
            JobTable.Purchase => e.Purchase.Lines.Sum(l => l.Packs.Length),
            JobTable.CutPlan => e.Wiring.Runs.Length,
            JobTable.Circuits => e.Wiring.Circuits.Length,
            JobTable.PanelSchedule => e.Schedules.Panels.Sum(s => s.Breakers.Sum(b => b.Spaces.Length) + s.FreeSpaces.Count() + s.Unplaced.Length),
            JobTable.Loads => e.Loads.Sheets.Sum(s => s.Lines.Length) + e.Loads.Feeders.Sum(f => f.Sheet.Lines.Length),
            JobTable.Devices => e.Layout.Devices.Length,
            JobTable.Findings => e.Findings.Length,
            JobTable.Range => e.Bid.Range.Factors.Length + e.Bid.Range.Bins.Length,
            JobTable.Bid => e.Bid.DirectCost.Length + e.Bid.Additions.Length + 8,
            JobTable.PullList => e.Wiring.Runs.Length + e.Wiring.Feeders.Length,
            JobTable.Boxes => e.Wiring.Boxes.Length,
            JobTable.BoxContents => e.Wiring.Boxes.Sum(b => b.Joints.Length),
            JobTable.Tools => KitLine.Of(e).Count(),
            JobTable.Tests => TestLine.Of(e, new CrewLabels(e)).Count(),
            JobTable.LeftOver => e.Purchase.Lines.Count(l => l.Left > 0 && l.Unit != "foot") + e.Purchase.Cuts.Sum(c => c.Coils.Length),
            JobTable.Explanations => e.Book.Pages.Sum(p => p.Count),
            JobTable.Alternates => e.House.Job.Alternates.Length,
            JobTable.UnitPrices => 6,
            JobTable.ScheduleOfValues => PaymentPlanning.Compute(e, Catalogues.Shipped).Lines.Length + 1,
            _ => throw new ArgumentOutOfRangeException(nameof(table)),
        };
        Assert.Equal(expected, Read(e, table).Count - 1);
    }

    [Fact]
    public void Write_Takeoff_HoldsTheQuantitiesOfTheEngine()
    {
        var rows = Read(SampleEstimates.Basement, JobTable.Takeoff);
        Assert.All(SampleEstimates.Basement.Takeoff.Lines, line => Assert.Contains(
            rows, r => r[0] == line.ItemId && BookCells.Number(r[4]) == decimal.Round(line.Quantity.Value, 4, MidpointRounding.AwayFromZero)));
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Write_HostileNames_StartNoFormula(JobTable table)
    {
        var rows = Read(HostileTexts.Estimate("=1+1"), table);
        Assert.All(rows.SelectMany(r => r).Where(c => c.Length > 0 && !decimal.TryParse(c, NumberStyles.Float, CultureInfo.InvariantCulture, out _)), c => Assert.DoesNotContain(c[0], "=+-@\t\r\n＝＋－＠"));
        if (table is JobTable.Devices or JobTable.CutPlan)
        {
            Assert.Contains(rows, r => r.Any(c => c.StartsWith("'=1+1", StringComparison.Ordinal)));
        }
    }

    [Fact]
    public void Write_Bid_AddsUpToThePrice()
    {
        foreach (var estimate in (JobEstimate[])[SampleEstimates.Basement, SampleEstimates.House, SampleEstimates.Service])
        {
            var rows = Read(estimate, JobTable.Bid);
            Assert.Equal(BookCells.Number(rows.Single(r => r[1] == "price")[3]), rows.Where(r => r[0] is "direct_cost" or "addition").Sum(r => BookCells.Number(r[3])));
        }
    }

    [Fact]
    public void Write_ScheduleOfValues_AddsUpToThePrice()
    {
        var rows = Read(SampleEstimates.House, JobTable.ScheduleOfValues);
        Assert.Equal(SampleEstimates.House.Bid.Price.Value, rows.Skip(1).Where(r => r[0] != "total").Sum(r => BookCells.Number(r[2])));
    }

    private static List<string[]> Read(JobEstimate estimate, JobTable table)
    {
        using var parser = new CsvParser(new StringReader(JobTables.Write(estimate, table, Catalogues.Shipped)), CultureInfo.InvariantCulture);
        var rows = new List<string[]>();
        while (parser.Read())
        {
            rows.Add(parser.Record!);
        }

        return rows;
    }
}
