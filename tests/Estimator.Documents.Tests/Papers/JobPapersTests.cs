using System.Globalization;
using System.Text.RegularExpressions;
using Estimator.Documents.Crew;
using Estimator.Documents.Loads;
using Estimator.Documents.Papers;
using Estimator.Documents.Tests.Workbooks;
using Estimator.Engine;
using Estimator.Engine.Measures;

namespace Estimator.Documents.Tests.Papers;

/// <summary>Every paper read back by another library: what it prints is what the engine found.</summary>
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
            Assert.Contains($"All runs {runs.Count} {Length.FromSixteenths(runs.Sum(r => (long)r.Length.ToSixteenths()))}", read.AllLines);
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

    private static string Dollars(decimal dollars) => string.Create(CultureInfo.InvariantCulture, $"${dollars:#,0.00}");

    [GeneratedRegex(@"\bspare\b", RegexOptions.None, 1000)]
    private static partial Regex Spare();
}
