using Bunit;
using Estimator.Documents.Loads;
using Estimator.Engine.House;
using Estimator.Web.Loads;
using Estimator.Web.Panels;
using Estimator.Web.Tests.Entries;

namespace Estimator.Web.Tests.Panels;

public sealed class PanelTests : WebContext
{
    public static TheoryData<string, object, Func<Panel, string>, string> Statements => new()
    {
        { "Name", "Service", p => p.Name, "Service" },
        { "Room", "family", p => $"{p.Room} {p.At} {p.Wall!.Side}", "family  1" },
        { "Panel is", "no", p => $"{p.Existing}", "False" },
        { "Rating", "150 A", p => $"{p.RatingA}", "150 A" },
        { "Spaces", "42", p => $"{p.Spaces}", "42" },
        { "That take a tandem", "6", p => $"{p.TandemSpaces}", "6" },
        { "New circuits", "yes", p => $"{p.NoNewCircuits}", "True" },
        { "Make", "", p => $"{p.Make is null}", "True" },
        { "Series", "", p => $"{p.Series is null}", "True" },
        { "Floor area outside this job", "1,850 sq ft", p => $"{p.OtherAreaSqFt}", "1850 sq ft" },
        { "Highest demand of the last year", "9.6 kVA", p => $"{p.MeasuredDemandVa}", "9600 VA" },
        { "Name of circuit Dryer", "Dryer, garage", p => p.Circuits[1].Name, "Dryer, garage" },
        { "Breaker of Dryer", "40", p => $"{p.Circuits[1].BreakerA}", "40 A" },
        { "Poles of Dryer", "1", p => $"{p.Circuits[1].Poles}", "1" },
        { "Space of Dryer", "7", p => $"{p.Circuits[1].Space}", "7" },
        { "Half of a tandem, Dryer", true, p => $"{p.Circuits[1].Tandem}", "True" },
        { "Load of Dryer", "5,500", p => $"{p.Circuits[1].LoadVa}", "5500 VA" },
        { "Add a circuit that Main panel carries", "Hot tub 50/2", p => $"{p.Circuits[^1].Name} {p.Circuits[^1].BreakerA} {p.Circuits[^1].Poles}", "Hot tub 50 A 2" },
    };

    [Theory]
    [MemberData(nameof(Statements))]
    public async Task Field_OfAPanel_ReachesTheJobAndIsUndone(string label, object typed, Func<Panel, string> read, string expected)
    {
        await OpenSampleAsync();
        var before = Desk.Job.Panels[0];
        var part = Render<PanelsPart>();

        await EntryFields.StateAsync(part, label, typed);

        Assert.Equal(expected, read(Desk.Job.Panels[0]));
        await Desk.UndoAsync();
        Assert.Equal((before.Name, before.At, before.RatingA, before.Circuits.Length), (Desk.Job.Panels[0].Name, Desk.Job.Panels[0].At, Desk.Job.Panels[0].RatingA, Desk.Job.Panels[0].Circuits.Length));
    }

    [Theory]
    [InlineData("Rating", "800", "15 to 600 amperes")]
    [InlineData("Rating", "", "Found nothing")]
    [InlineData("Spaces", "200", "1 to 84 spaces")]
    [InlineData("That take a tandem", "31", "0 to 30 spaces")]
    [InlineData("Breaker of Dryer", "0", "1 to 600 amperes")]
    [InlineData("Load of Dryer", "300 kVA", "0 to 200000 volt-amperes")]
    [InlineData("Add a circuit that Main panel carries", "Dryer", "Dryer 30/2")]
    [InlineData("Add a circuit that Main panel carries", "Dryer 30/3", "1 to 2 poles")]
    public async Task Field_WrongEntry_SaidThereAndNothingChanged(string label, string typed, string said)
    {
        await OpenSampleAsync();
        var part = Render<PanelsPart>();

        await EntryFields.StateAsync(part, label, typed);

        Assert.Contains(said, part.Find(".wrong").TextContent, StringComparison.Ordinal);
        Assert.Equal(0, Desk.Version);
    }

    [Fact]
    public async Task Subpanel_AddedAndRemoved_FedFromTheFirst()
    {
        await OpenSampleAsync();
        var part = Render<PanelsPart>();

        await EntryFields.PressAsync(part, "Add a subpanel");

        Assert.Equal("P1", Desk.Job.Panels[1].FedFrom);
        await part.FindAll("h3 button.lk")[^1].ClickAsync(new());
        Assert.Single(Desk.Job.Panels);
    }

    [Fact]
    public async Task Panel_ThatFeedsAnother_IsNotRemoved()
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Subpanel", j => PanelActs.Add(j, "P2"), Token);
        var part = Render<PanelsPart>();

        await part.FindAll("h3 button.lk")[0].ClickAsync(new());

        Assert.Contains("id of another panel", part.Find(".wrong").TextContent, StringComparison.Ordinal);
        Assert.Equal(2, Desk.Job.Panels.Length);
    }

    [Fact]
    public async Task Loads_ExistingService_EveryLineIsANumberAndTheLowestDecides()
    {
        var priced = await OpenSampleAsync();
        var part = Render<LoadsPart>(p => p.AddCascadingValue(priced.Source));

        var sheets = priced.Estimate.Loads.Sheets;

        Assert.Equal(["standard", "optional", "existing"], sheets.Select(s => s.Method));
        Assert.Equal(sheets.Sum(s => LoadWords.Shown(s).Count() + 1), part.FindAll("[data-n]").Count);
        Assert.All(sheets.SelectMany(s => s.Lines).Except(sheets.SelectMany(LoadWords.Shown)), l => Assert.Equal(0m, l.Value.Value));
        Assert.Equal(sheets.Min(s => s.Amperes.Value), LoadWords.Decisive(sheets)!.Amperes.Value);
    }

    [Fact]
    public async Task Loads_RestOfTheHouseNotKnown_SaysWhatToState()
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Area", j => PanelActs.With(j, "P1", p => p with { OtherAreaSqFt = null }), Token);
        await PricedAsync();
        var part = Render<LoadsPart>();

        part.WaitForAssertion(() => Assert.Contains("can't be judged", part.Markup.Replace("&#x27;", "'", StringComparison.Ordinal), StringComparison.Ordinal));
        Assert.Empty(part.FindAll("[data-n]"));
    }

    [Fact]
    public async Task Loads_ServiceTooSmall_ShowsTheFinding()
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Rating", j => PanelActs.With(j, "P1", p => p with { RatingA = Engine.Measures.Current.FromAmperes(60) }), Token);
        var priced = await PricedAsync();
        var part = Render<LoadsPart>(p => p.AddCascadingValue(priced.Source));

        part.WaitForAssertion(() => Assert.Contains("the service is 60 A", part.Find(".finding").TextContent, StringComparison.Ordinal));
    }
}
