using System.Globalization;
using System.Text.RegularExpressions;
using Estimator.Documents.Crew;
using Estimator.Documents.Loads;
using Estimator.Documents.Papers;
using Estimator.Documents.Tests.Workbooks;
using Estimator.Engine;
using Estimator.Engine.Measures;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Documents.Tests.Papers;

/// <summary>Every paper read back by another library: what it prints is what the engine found, and lines add up to their totals.</summary>
public sealed partial class JobPapersTests
{
    private static readonly Letterhead Head = Letterhead.Blank with
    {
        Company = "Firm",
        CompanyLines = ["1 Street", "License 1"],
        Customer = "Customer",
        Site = "Site",
        Revision = "2",
        IssuedOn = new DateOnly(2026, 3, 4),
        PaymentTerms = "Half, half.",
    };

    public static TheoryData<JobPaper> Papers { get; } = [.. Enum.GetValues<JobPaper>()];

    private static IEnumerable<JobEstimate> Samples => [SampleEstimates.Basement, SampleEstimates.House, SampleEstimates.Service];

    [Theory]
    [MemberData(nameof(Papers))]
    public void Paper_OfEachSample_IsWellMade(JobPaper paper)
    {
        foreach (var estimate in Samples)
        {
            var read = new PaperReading(JobPapers.Write(estimate, Head, paper));
            read.IsWellMade();
            Assert.EndsWith(estimate.House.Job.Name, read.Title, StringComparison.Ordinal);
            Assert.All((string[])["Firm", "1 Street · License 1", "Revision 2 · March 4, 2026"], t => Assert.Contains(t, string.Join(' ', read.Pages[0]), StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void Paper_OfTheSameEstimate_HasTheSameBytes(JobPaper paper) =>
        Assert.Equal(JobPapers.Write(SampleEstimates.Basement, Head, paper), JobPapers.Write(SampleEstimates.Basement, Head, paper));

    [Theory]
    [MemberData(nameof(Papers))]
    public void Paper_OfHostileTexts_IsWellMade(JobPaper paper)
    {
        foreach (var text in HostileTexts.All.Values)
        {
            new PaperReading(JobPapers.Write(HostileTexts.Estimate(text), HostileTexts.Letterhead(text), paper)).IsWellMade();
        }
    }

    [Fact]
    public void Customer_Figures_AreTheEnginesWithoutACost()
    {
        foreach (var estimate in Samples)
        {
            var read = new PaperReading(JobPapers.Write(estimate, Head, JobPaper.Customer));
            var bid = estimate.Bid;
            Assert.Contains(Dollars(bid.Price.Value), read.Pages[0]);
            Assert.Contains($"Between {Dollars(bid.Low.Value)} if all goes well and {Dollars(bid.High.Value)}", read.Text, StringComparison.Ordinal);
            Assert.All(bid.Inclusions.Concat(bid.Exclusions), s => Assert.Contains(s.Split(' ')[0], read.Text, StringComparison.Ordinal));
            Assert.All(bid.DirectCost.Concat(bid.Additions).Where(l => l.Amount.Value != 0), l => Assert.DoesNotContain(Dollars(l.Amount.Value)[1..], read.Text, StringComparison.Ordinal));
            Assert.Contains("Customer: name, signature", read.Text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Permit_EveryLineOfEverySheet_IsPrintedWithItsArticle()
    {
        foreach (var estimate in Samples)
        {
            var read = new PaperReading(JobPapers.Write(estimate, Head, JobPaper.Permit));
            foreach (var line in estimate.Loads.Sheets.Concat(estimate.Loads.Feeders.Select(f => f.Sheet)).SelectMany(LoadWords.Shown))
            {
                var unit = line.Value.Unit is Engine.Explanations.Unit.Amperes ? "A" : "VA";
                var article = line.Article.Length > 0 ? $" {line.Article}{(line.Verified ? "" : ", not verified")}" : "";
                Assert.Contains($"{line.Label}{article} {line.Value.Value.ToString("#,0.####", CultureInfo.InvariantCulture)} {unit}", read.AllLines);
            }
        }
    }

    [Fact]
    public void Crew_PullList_HasEveryRunOnce()
    {
        foreach (var estimate in Samples)
        {
            var read = new PaperReading(JobPapers.Write(estimate, Head, JobPaper.Crew));
            var runs = PulledRun.Of(estimate, new CrewLabels(estimate)).ToList();
            Assert.Equal(estimate.Wiring.Runs.Length + estimate.Wiring.Feeders.Length, runs.Count);
            Assert.Contains($"All runs {runs.Count} {runs.Aggregate(Length.Zero, (s, r) => s + r.Length)}", read.AllLines);
            foreach (var cable in estimate.Purchase.Cuts)
            {
                var pieces = cable.Coils.SelectMany(c => c.Pieces).Concat(cable.TooLong).Select(p => p.Length).Order().ToList();
                var pulled = runs.Where(r => estimate.Takeoff.Pieces.Any(p => p.ItemId == cable.ItemId && p.Run == r.Run)).Select(r => r.Length).Order().ToList();
                Assert.Equal(pieces, pulled);
            }

            Assert.All(runs, r => Assert.Contains(r.Length.ToString(), read.Text, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Crew_Labels_NameEveryBoxOnce()
    {
        foreach (var estimate in Samples)
        {
            var labels = new CrewLabels(estimate);
            Assert.Equal(estimate.Wiring.Boxes.Length, Enumerable.Range(0, estimate.Wiring.Boxes.Length).Select(labels.Box).Distinct().Count());
            Assert.Equal(estimate.Wiring.Circuits.Length, Enumerable.Range(0, estimate.Wiring.Circuits.Length).Select(labels.Circuit).Distinct().Count());
            var read = new PaperReading(JobPapers.Write(estimate, Head, JobPaper.Crew));
            var words = read.Text.Split(' ').ToHashSet(StringComparer.Ordinal);
            Assert.All(MadeUpBox.Of(estimate, labels), b => Assert.Contains(b.Label.Split(' ')[^1], words));
        }
    }

    [Fact]
    public void Crew_DoorCards_NameEveryBreakerOfEveryPanel()
    {
        var read = new PaperReading(JobPapers.Write(SampleEstimates.Service, Head, JobPaper.Crew));
        Assert.Equal(SampleEstimates.Service.Schedules.Panels.Length, read.Bookmarks.Count(b => b.Title.StartsWith("Door card", StringComparison.Ordinal)));
        foreach (var (schedule, i) in SampleEstimates.Service.Schedules.Panels.Select((s, i) => (s, i)))
        {
            var page = string.Join(' ', read.Pages[read.Bookmarks.Where(b => b.Title.StartsWith("Door card", StringComparison.Ordinal)).ElementAt(i).Page - 1]);
            Assert.All(schedule.Breakers, b => Assert.Contains(b.Breaker.Name.Split(' ')[0], page, StringComparison.Ordinal));
            Assert.Equal(schedule.FreeSpaces.Count(), Spare().Count(page));
        }
    }

    /// <summary>Rows above a total add up to it: random houses, every paper, every table whose last column is a number.</summary>
    [Fact]
    public void Totals_OfRandomHouses_AreTheSumOfPrintedLines()
    {
        for (var n = 0; n < 12; n++)
        {
            var estimate = SmallJobs.Estimate(HouseGen.Number(n));
            var customer = new PaperReading(JobPapers.Write(estimate, Head, JobPaper.Customer));
            AddsUp(customer, "Room What is put in Openings", "All rooms", estimate.Takeoff.Openings.Value);
            AddsUp(customer, "System What belongs to it Openings", "All systems", estimate.Takeoff.Openings.Value);
            AddsUp(new PaperReading(JobPapers.Write(estimate, Head, JobPaper.Budget)), "Room What is put in Openings", "All rooms", estimate.Takeoff.Openings.Value);
            var permit = new PaperReading(JobPapers.Write(estimate, Head, JobPaper.Permit));
            AddsUp(permit, "Equipment Room Connected by Volts Load, VA", "Connected load", estimate.Layout.Equipment.Sum(e => e.LoadVa.Value));
            foreach (var schedule in estimate.Schedules.Panels)
            {
                AddsUp(permit, "Legs Load, VA", "Both legs", schedule.LegAVa.Value + schedule.LegBVa.Value);
            }
        }
    }

    [Fact]
    public void Prices_OfRandomBids_AreTheSumOfPrintedLines()
    {
        foreach (var estimate in RecalculatedBooks.Seeds.Select(RecalculatedBooks.RandomBid))
        {
            var customer = new PaperReading(JobPapers.Write(estimate, Head, JobPaper.Customer));
            AddsUp(customer, "For what nobody has seen or chosen yet Amount, $", "Allowances", estimate.Bid.DirectCost.Where(l => l.Id.StartsWith("allowance-", StringComparison.Ordinal)).Sum(l => l.Amount.Value));
            if (estimate.Bid.Additions.Any(l => l.Id == "sales-tax"))
            {
                AddsUp(customer, "Made up of Amount, $", "Price", estimate.Bid.Price.Value);
            }
        }
    }

    // A wrapped row ends its figure on its first line; continuation lines end in words.
    private static void AddsUp(PaperReading read, string heads, string total, decimal expected)
    {
        var (open, sum, found) = (false, 0m, new List<(decimal Sum, decimal Printed)>());
        foreach (var line in read.AllLines)
        {
            if (line == heads)
            {
                open = true;
            }
            else if (open && line.StartsWith($"{total} ", StringComparison.Ordinal))
            {
                found.Add((sum, Number(line)!.Value));
                (open, sum) = (false, 0);
            }
            else if (open && !line.StartsWith("Planning aid", StringComparison.Ordinal) && !line.EndsWith("March 4, 2026", StringComparison.Ordinal))
            {
                sum += Number(line) ?? 0;
            }
        }

        if (expected > 0)
        {
            Assert.Contains((expected, expected), found);
        }
    }

    private static decimal? Number(string line) =>
        LastNumber().Match(line) is { Success: true } m ? decimal.Parse(m.Value, NumberStyles.Number, CultureInfo.InvariantCulture) : null;

    private static string Dollars(decimal dollars) => string.Create(CultureInfo.InvariantCulture, $"${dollars:#,0.00}");

    [GeneratedRegex(@"(?<= )[\d,]+(\.\d+)?$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex LastNumber();

    [GeneratedRegex(@"\bspare\b", RegexOptions.None, 1000)]
    private static partial Regex Spare();
}
