using System.Globalization;
using Estimator.Documents.Papers;
using Estimator.Documents.Pricing;
using Estimator.Documents.Tables;
using Estimator.Documents.Tests.Papers;
using Estimator.Engine;
using Estimator.Engine.Alternates;
using Estimator.Engine.House;
using Estimator.TestKit;

namespace Estimator.Documents.Tests.Pricing;

/// <summary>What stands beside the price on the customer's papers is what the engine makes of the changed house.</summary>
public sealed class CustomerOfferTests
{
    [Fact]
    public void Customer_PaperAndTable_ShowAlternatesPackagesAndUnitPrices()
    {
        var estimate = JobEstimate.Compute(WithAlternates(SampleEstimates.Job("basement-finish")), Catalogues.Shipped);
        var offer = CustomerOffer.Of(estimate, Catalogues.Shipped);
        Assert.Equal(2, offer.Alternates.Length);
        var more = offer.Alternates[0].Priced!.Price.Value;
        Assert.True(more > 0);

        var paper = new PaperReading(JobPapers.Write(estimate, Letterhead.Blank, JobPaper.Customer, offer));
        paper.IsWellMade();
        Assert.Contains("Alternates, not in the price", paper.Text, StringComparison.Ordinal);
        Assert.Contains($"more {more.ToString("#,##0.00", CultureInfo.InvariantCulture)}", paper.Text, StringComparison.Ordinal);
        foreach (var unit in offer.UnitPrices)
        {
            Assert.Contains(unit.What, paper.Text, StringComparison.Ordinal);
            Assert.Contains(decimal.Round(unit.Price.Value, 2, MidpointRounding.AwayFromZero).ToString("#,##0.00", CultureInfo.InvariantCulture), paper.Text, StringComparison.Ordinal);
        }

        var table = JobTables.Write(estimate, JobTable.Alternates, Catalogues.Shipped);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"alternate,1,Two more receptacles,{more:0.##},"), table, StringComparison.Ordinal);
        Assert.Contains("package,\"1, 2\",Better,", table, StringComparison.Ordinal);
    }

    [Fact]
    public void Customer_WithoutAlternates_SaysNothingOfThem()
    {
        var paper = new PaperReading(JobPapers.Write(SampleEstimates.Basement, Letterhead.Blank, JobPaper.Customer, CustomerOffer.None));
        Assert.DoesNotContain("Alternates", paper.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Unit prices", paper.Text, StringComparison.Ordinal);
    }

    private static Job WithAlternates(Job job)
    {
        var room = job.Levels[0].Rooms[0].Id;
        return job with
        {
            Alternates =
            [
                AlternateChanges.Of(job, "A1", "Two more receptacles", j => j.With(r => r.Id == room ? r with { Counts = [.. r.Counts.Select(c => c.Kind is DeviceKind.DuplexReceptacle ? c with { Count = c.Count + 2 } : c)] } : r)),
                AlternateChanges.Of(job, "A2", "Ground-fault protection at the first receptacle", j => j with { Practice = j.Practice with { GroundFaultBy = GroundFaultBy.FirstReceptacle } }),
            ],
            AlternatePackages = [new AlternatePackage { Id = "P1", Name = "Better", Alternates = ["A1", "A2"] }],
        };
    }
}
