using System.Globalization;
using Estimator.Documents.Crew;
using Estimator.Documents.Loads;
using Estimator.Documents.Papers;
using Estimator.Engine;
using Estimator.Engine.Explanations;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Documents.Tests.Sums;

/// <summary>The papers of random houses and random bids, read back: the printed lines of every table add up to its printed total.</summary>
public sealed class PaperSumsTests
{
    private const int Houses = 16;
    private const string Worksheet = "Line Article Figure";

    private static readonly Lazy<List<JobEstimate>> Random = new(() => [.. Enumerable.Range(0, Houses).Select(n => SmallJobs.Estimate(HouseGen.Number(n)))]);

    [Fact]
    [AddsUp("CustomerPaper")]
    public void Customer_OfRandomHouses_OpeningsAddUp() => Each(JobPaper.Customer, (estimate, tables) =>
    {
        Total(tables, "Room What is put in Openings", estimate.Takeoff.Openings.Value);
        Total(tables, "System What belongs to it Openings", estimate.Takeoff.Openings.Value);
    });

    [Fact]
    [AddsUp("CustomerPaper")]
    public void Customer_OfRandomBids_PricesAddUp()
    {
        foreach (var estimate in RecalculatedBooks.Seeds.Select(RecalculatedBooks.RandomBid))
        {
            var tables = Read(estimate, JobPaper.Customer);
            Total(tables, "For what nobody has seen or chosen yet Amount, $", estimate.Bid.DirectCost.Where(l => l.Id.StartsWith("allowance-", StringComparison.Ordinal)).Sum(l => l.Amount.Value));
            if (estimate.Bid.Additions.Any(l => l.Id == "sales-tax"))
            {
                Total(tables, "Made up of Amount, $", estimate.Bid.Price.Value);
            }
        }
    }

    [Fact]
    [AddsUp("BudgetPaper")]
    public void Budget_OfRandomHouses_DevicesAndOpeningsAddUp() => Each(JobPaper.Budget, (estimate, tables) =>
    {
        Total(tables, "Room What is put in Openings", estimate.Takeoff.Openings.Value);
        Total(tables, "In this plan Asked for Your choice Asked for by", estimate.Layout.Devices.Length);
    });

    [Fact]
    [AddsUp("PermitPaper")]
    public void Permit_OfRandomHouses_EquipmentAndPanelsAddUp() => Each(JobPaper.Permit, (estimate, tables) =>
    {
        Total(tables, "Equipment Room Connected by Volts Load, VA", estimate.Layout.Equipment.Sum(e => e.LoadVa.Value));
        var panels = tables.Where(t => t.Heads == "Circuit A VA VA A Circuit").ToList();
        var legs = tables.Where(t => t.Heads == "Legs Load, VA").ToList();
        Assert.Equal(estimate.Schedules.Panels.Length, legs.Count);
        foreach (var (schedule, i) in estimate.Schedules.Panels.Select((s, i) => (s, i)))
        {
            Total([legs[i]], legs[i].Heads, schedule.LegAVa.Value + schedule.LegBVa.Value);
            Assert.Equal(legs[i].Sum(1), panels[i].Sum(2) + panels[i].Sum(3));
        }
    });

    /// <summary>A printed line that is by its explanation the sum of other lines is the sum of what those print.</summary>
    [Fact]
    [AddsUp("PermitPaper")]
    public void Permit_OfRandomHouses_LoadsAddUp()
    {
        var proven = 0;
        Each(JobPaper.Permit, (estimate, tables) =>
        {
            var lines = estimate.Loads.Sheets.Concat(estimate.Loads.Feeders.Select(f => f.Sheet)).SelectMany(LoadWords.Shown).ToList();
            var figures = tables.Where(t => t.Heads == Worksheet).SelectMany(t => t.Rows).Select(r => r.Figures[^1]).OfType<decimal>().ToList();
            Assert.Equal(lines.Count, figures.Count);
            proven += LoadSums(estimate, lines.Zip(figures).DistinctBy(x => x.First.Value.Node).ToDictionary(x => x.First.Value.Node, x => x.Second));
        });
        Assert.True(proven > Houses, $"{proven} sums are too few");
    }

    [Fact]
    [AddsUp("CrewPaper")]
    public void Crew_OfRandomHouses_CableByKindAddsUp() => Each(JobPaper.Crew, (estimate, tables) =>
    {
        var runs = PulledRun.Of(estimate, new CrewLabels(estimate)).ToList();
        var (sums, list) = (tables.Single(t => t.Heads == "Cable Runs Length, ft in"), tables.Where(t => t.Heads == "From To Cable Length, ft in Carries Way").ToList());
        Assert.Equal(runs.Count, list.Sum(t => t.Rows.Count(r => r.Figures[3] is not null)));
        Assert.Equal(sums.Sum(2), list.Sum(t => t.Sum(3)));
        Assert.Equal(sums.Sum(1), runs.Count);
    });

    [Fact]
    [AddsUp("CrewPaper")]
    public void Crew_OfRandomHouses_CoilsAndRoomsAddUp() => Each(JobPaper.Crew, (estimate, tables) =>
    {
        foreach (var (band, rows) in tables.Where(t => t.Heads == "Cut Length, ft in Cut at mark Left on coil From To").SelectMany(t => t.Bands()).Where(b => b.Band.Contains(" pieces, ", StringComparison.Ordinal)))
        {
            Assert.Contains(FormattableString.Invariant($", {rows.Count(r => r.Figures[0] is not null)} pieces, "), band, StringComparison.Ordinal);
        }

        foreach (var (band, rows) in tables.Where(t => t.Heads == "Device Height Box Circuit Note").SelectMany(t => t.Bands()))
        {
            Assert.True(rows.Count >= int.Parse(band.Split(' ')[^1], CultureInfo.InvariantCulture), band);
        }
    });

    // How many sums were proven.
    private static int LoadSums(JobEstimate estimate, Dictionary<NodeRef, decimal> shown)
    {
        var proven = 0;
        foreach (var (node, figure) in shown)
        {
            var told = estimate.Book[node];
            if (told.Operation is Operation.Sum && told.Inputs.Length > 1 && told.Inputs.All(i => shown.ContainsKey(i) || estimate.Book[i].Value == 0))
            {
                Assert.Equal(figure, told.Inputs.Sum(i => shown.GetValueOrDefault(i)));
                proven++;
            }
        }

        return proven;
    }

    private static void Each(JobPaper paper, Action<JobEstimate, IReadOnlyList<PrintedTable>> holds)
    {
        foreach (var estimate in Random.Value)
        {
            var tables = Read(estimate, paper);
            Assert.All(tables.Where(t => t.Heads != Worksheet).SelectMany(t => t.Sums), s => Assert.Equal(s.Printed, s.Lines));
            holds(estimate, tables);
        }
    }

    private static IReadOnlyList<PrintedTable> Read(JobEstimate estimate, JobPaper paper) => PrintedTables.Of(JobPapers.Write(estimate, Letterhead.Blank, paper));

    private static void Total(IReadOnlyList<PrintedTable> tables, string heads, decimal expected)
    {
        if (expected > 0)
        {
            Assert.Contains((expected, expected), tables.Where(t => t.Heads == heads).SelectMany(t => t.Sums).Select(s => (s.Lines, s.Printed)));
        }
    }
}
