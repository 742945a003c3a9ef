using Bunit;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.TestKit;
using Estimator.Web.Panels;
using Estimator.Web.Tests.Entries;

namespace Estimator.Web.Tests.Panels;

public sealed class ServiceTests : WebContext
{
    public static TheoryData<string, object, Func<ServiceWork, string>, string> Statements => new()
    {
        { "Service size", "200 A", s => $"{s.RatingA}", "200 A" },
        { "It arrives", "Underground", s => $"{s.Entrance}", "Underground" },
        { "Conductors", "Copper", s => $"{s.Metal}", "Copper" },
        { "The house is cut off by", "InPanel", s => $"{s.Disconnect}", "InPanel" },
        { "Service conductors", "30'", s => $"{s.ConductorLength?.ToFeet()}", "30" },
        { "Trench that we dig", "60 ft", s => $"{s.Trench?.ToFeet()}", "60" },
        { "Disconnect to panel", "12 ft", s => $"{s.DisconnectToPanel?.ToFeet()}", "12" },
        { "Ground rods", "3", s => $"{s.GroundRods}", "3" },
        { "Waiting for the utility", "14", s => $"{s.UtilityWaitDays}", "14" },
        { "A metal water pipe is bonded", true, s => $"{s.WaterPipe}", "True" },
        { "Concrete-encased electrode is there", true, s => $"{s.ConcreteEncased}", "True" },
        { "An old service comes down", false, s => $"{s.Replaces}", "False" },
        { "Temporary power is needed", true, s => $"{s.TemporaryPower}", "True" },
    };

    [Theory]
    [MemberData(nameof(Statements))]
    public async Task Field_OfTheService_ReachesTheJobAndIsUndone(string label, object typed, Func<ServiceWork, string> read, string expected)
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Service", j => j with { Service = new ServiceWork { Replaces = true, Entrance = label == "Trench that we dig" ? ServiceEntrance.Underground : ServiceEntrance.Overhead } }, Token);
        var before = Desk.Job.Service;
        var part = Render<ServicePart>();

        await EntryFields.StateAsync(part, label, typed);

        Assert.Equal(expected, read(Desk.Job.Service!));
        await Desk.UndoAsync();
        Assert.Equal(before, Desk.Job.Service);
    }

    [Fact]
    public async Task Service_Stated_ShowsWhatItTakesAndTheCaution()
    {
        await OpenSampleAsync();
        var part = Render<ServicePart>();
        Assert.Empty(part.FindAll("table"));

        await EntryFields.PressAsync(part, "Replace the service");
        await PricedAsync();

        part.WaitForAssertion(() => Assert.Contains("Meter base", part.Find("table").TextContent, StringComparison.Ordinal));
        Assert.Contains("stay live", part.Find(".caution").TextContent, StringComparison.Ordinal);
        await EntryFields.PressAsync(part, "No work on the service");
        Assert.Null(Desk.Job.Service);
    }

    [Fact]
    public async Task Service_WrongEntry_SaidThereAndNothingChanged()
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Service", j => j with { Service = new ServiceWork() }, Token);
        var part = Render<ServicePart>();

        await EntryFields.StateAsync(part, "Ground rods", "200");

        Assert.Contains("0 to 20 ground rods", part.Find(".wrong").TextContent, StringComparison.Ordinal);
        Assert.Null(Desk.Job.Service!.GroundRods);
    }

    [Fact]
    public async Task Offers_PanelWithRoom_ShowNothing()
    {
        await OpenSampleAsync();
        Assert.Empty(Render<PanelOffers>().FindAll("section"));
    }

    // The kitchen of tests/data/jobs without its subpanel: two spaces for eight circuits.
    [Fact]
    public async Task Offers_FullPanel_OneIsAppliedInOneEditAndUndoneInOne()
    {
        await OpenSampleAsync();
        var kitchen = JobFile.Read(File.ReadAllText(Path.Combine(TestData.Root, "jobs", "kitchen-gut.json")), "kitchen-gut.json").Job;
        await Desk.EditAsync("Kitchen", j => kitchen with { Id = j.Id, Name = j.Name, Panels = [kitchen.Panels[0] with { NoNewCircuits = false }], Pins = new Pins() }, Token);
        await PricedAsync();
        var (before, version) = (Desk.Job.Panels.Length, Desk.Version);
        var part = Render<PanelOffers>();
        part.WaitForAssertion(() => Assert.NotEmpty(part.FindAll("tbody tr")), TimeSpan.FromSeconds(60));
        Assert.Contains("Add a subpanel of 100 A", part.Find("table").TextContent, StringComparison.Ordinal);

        await part.FindAll("tbody button").Single(b => b.TextContent == "Add subpanel").ClickAsync(new());

        Assert.Equal((before + 1, version + 1), (Desk.Job.Panels.Length, Desk.Version));
        Assert.Equal(Current.FromAmperes(100), Desk.Job.Panels[^1].RatingA);
        await Desk.UndoAsync();
        Assert.Equal(before, Desk.Job.Panels.Length);
    }

    [Theory]
    [InlineData("/tandem", true, null)]
    [InlineData("P2", false, "P2")]
    public async Task Circuit_ThatIsThere_GetsATandemOrMoves(string fate, bool tandem, string? movedTo)
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Subpanel", j => PanelActs.Add(j, "P2"), Token);
        var part = Render<PanelsPart>();

        await EntryFields.StateAsync(part, $"In this job, {Desk.Job.Panels[0].Circuits[^1].Name}", fate);

        Assert.Equal((tandem, movedTo), (Desk.Job.Panels[0].Circuits[^1].NewTandem, Desk.Job.Panels[0].Circuits[^1].MovedTo));
    }
}
