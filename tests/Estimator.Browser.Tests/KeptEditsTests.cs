using Estimator.Cli;
using Estimator.Engine;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Wiring;
using Estimator.TestKit;
using Microsoft.Playwright;

namespace Estimator.Browser.Tests;

/// <summary>What is in sight is the engine's, and reload or a second window loses nothing.</summary>
public sealed class KeptEditsTests(RunningPages pages)
{
    [Theory]
    [InlineData("Basement finish", "basement-finish")]
    [InlineData("Two-storey house", "two-storey-house")]
    public async Task Price_WhileAJobIsEdited_IsTheEnginesQuickOne(string title, string name)
    {
        await using var visit = await pages.OpenAsync(Screen.Desk);
        await visit.StartSampleAsync(title);
        var job = JobFile.Read(Samples.Read(name), name).Job;
        Assert.Equal(decimal.Round(JobEstimate.Compute(job, Catalogues.Shipped, SearchDepth.Quick).Bid.Price.Value, 0, MidpointRounding.AwayFromZero), await visit.PriceAsync());
    }

    [Fact]
    public async Task Job_AfterReloadAndInASecondWindow_IsTheSame()
    {
        await using var visit = await pages.OpenAsync(Screen.Desk);
        var id = await visit.StartSampleAsync("Basement finish");
        var price = await visit.PriceAsync();
        await visit.Page.ReloadAsync();
        Assert.Equal(price, await visit.PriceAsync());
        await using var second = await pages.OpenAsync(Screen.Phone);
        await second.GoAsync($"/jobs/{Uri.EscapeDataString(id)}/overview");
        Assert.Equal(price, await second.PriceAsync());
    }

    [Fact]
    public async Task Edits_OfTwoWindows_StandInBoth()
    {
        await using var first = await pages.OpenAsync(Screen.Desk);
        var id = await first.StartSampleAsync("Basement finish");
        await using var second = await pages.OpenAsync(Screen.Desk);
        var rooms = $"/jobs/{Uri.EscapeDataString(id)}/rooms";
        await first.GoAsync(rooms);
        await second.GoAsync(rooms);
        foreach (var (visit, name) in new[] { (first, "Den"), (second, "Wine store"), (first, "Gym") })
        {
            await AddRoomAsync(visit, $"{name} 9 x 9", name);
        }

        foreach (var visit in new[] { first, second })
        {
            await Assertions.Expect(visit.Page.Locator("tbody .roomname b")).ToContainTextAsync(["Den", "Wine store", "Gym"]);
            Assert.Empty(visit.Faults);
        }
    }

    // The program is killed while a room is being typed, again and again; what the page showed as stored is there when it comes back.
    [Fact]
    public async Task Edits_ThatThePageShowed_OutliveAKilledProgram()
    {
        const int Kills = 6;
        var folder = Directory.CreateTempSubdirectory("killed").FullName;
        try
        {
            var server = await RunningServer.StartAsync(folder);
            var port = new Uri(server.Address).Port;
            await using var visit = await pages.OpenAsync(server, Screen.Desk);
            var id = await visit.StartSampleAsync("Basement finish");
            var shown = new List<string>();
            for (var kill = 0; kill < Kills; kill++)
            {
                await visit.GoAsync($"/jobs/{Uri.EscapeDataString(id)}/rooms");
                await Assertions.Expect(visit.Page.Locator("tbody .roomname b")).ToContainTextAsync(shown);
                foreach (var name in new[] { $"Room {kill}a", $"Room {kill}b" })
                {
                    await AddRoomAsync(visit, $"{name} 10 x {kill + 8}", name);
                    shown.Add(name);
                }

                await visit.Page.Keyboard.TypeAsync($"Half typed {kill} 10 x");
                await server.DisposeAsync();
                server = await RunningServer.StartAsync(folder, port);
            }

            await visit.GoAsync($"/jobs/{Uri.EscapeDataString(id)}/rooms");
            await Assertions.Expect(visit.Page.Locator("tbody .roomname b")).ToContainTextAsync(shown);
            await server.DisposeAsync();
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    // Nobody has to load a page again by hand: it finds the new program by itself, with all that was stored.
    [Fact]
    public async Task OpenPage_WhenTheProgramWasStartedAgain_WorksOn()
    {
        var folder = Directory.CreateTempSubdirectory("again").FullName;
        var server = await RunningServer.StartAsync(folder);
        try
        {
            await using var visit = await pages.OpenAsync(server, Screen.Desk);
            var id = await visit.StartSampleAsync("Basement finish");
            await visit.GoAsync($"/jobs/{Uri.EscapeDataString(id)}/rooms");
            await AddRoomAsync(visit, "Workshop 9 x 10", "Workshop");

            await server.DisposeAsync();
            server = await RunningServer.StartAsync(folder, new Uri(server.Address).Port);
            await Assertions.Expect(visit.Page.Locator("#components-reconnect-modal")).ToBeHiddenAsync(new() { Timeout = 60_000 });
            await AddRoomAsync(visit, "Pantry 5 x 6", "Pantry");

            await Assertions.Expect(visit.Page.Locator("tbody .roomname b")).ToContainTextAsync(["Workshop", "Pantry"]);
        }
        finally
        {
            await server.DisposeAsync();
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task AddRoomAsync(Visit visit, string text, string name)
    {
        await visit.Page.GetByLabel("Name and two sides").ClickAsync();
        await visit.Page.Keyboard.TypeAsync(text);
        await visit.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(visit.Page.Locator("tbody .roomname b").GetByText(name, new() { Exact = true })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Export_OfAJob_IsReadByTheEngine()
    {
        await using var visit = await pages.OpenAsync(Screen.Desk);
        var id = await visit.StartSampleAsync("Basement finish");
        var text = await visit.Page.EvaluateAsync<string>("async address => await (await fetch(address)).text()", $"/jobs/{Uri.EscapeDataString(id)}/file");
        Assert.True(JobFile.Read(text, "export.json").Ok);
    }
}
