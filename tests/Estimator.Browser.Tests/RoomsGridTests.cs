using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Microsoft.Playwright;

namespace Estimator.Browser.Tests;

/// <summary>Rooms of a blank job by template, by rows from a spreadsheet and by repeating one: what the grid shows is what the job file holds.</summary>
public sealed class RoomsGridTests(RunningPages pages)
{
    [Fact]
    public async Task Rooms_ByTemplatePasteAndRepeat_StandInTheJob()
    {
        await using var visit = await pages.OpenAsync(Screen.Desk);
        var page = visit.Page;
        await page.Context.GrantPermissionsAsync(["clipboard-read", "clipboard-write"]);
        await visit.GoAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "New job" }).ClickAsync();
        await page.WaitForURLAsync("**/jobs/*/**");
        await visit.PriceAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Rooms" }).ClickAsync();
        await CountAsync(page, 1);

        await page.GetByRole(AriaRole.Button, new() { Name = "Kitchen", Exact = true }).ClickAsync();
        await CountAsync(page, 2);

        await page.EvaluateAsync("() => navigator.clipboard.writeText('Room\\tWidth\\tLength\\tRecessed\\nDen\\t10\\t12\\t4\\nPlay room\\t14 6\\t16\\t6\\n')");
        await page.Locator("table.roomgrid input").First.FocusAsync();
        await page.Keyboard.PressAsync("Control+v");
        await CountAsync(page, 4);

        await page.Locator("tr", new() { HasText = "Play room" }).Locator("input").First.FocusAsync();
        await page.Keyboard.PressAsync("r");
        await CountAsync(page, 5);

        var id = new Uri(page.Url).Segments[2].TrimEnd('/');
        var job = JobFile.Read(await page.EvaluateAsync<string>("async address => await (await fetch(address)).text()", $"/jobs/{id}/file"), "job.json").Job;
        var rooms = job.Levels.SelectMany(l => l.Rooms).ToList();
        Assert.Contains(rooms, r => r.Kind is RoomKind.Kitchen);
        Assert.Equal([6, 6], rooms.Where(r => r.Name.StartsWith("Play room", StringComparison.Ordinal)).Select(r => r.Counts.Single(c => c.Kind is DeviceKind.RecessedLight).Count));
        Assert.Equal(4, rooms.Single(r => r.Name == "Den").Counts.Single(c => c.Kind is DeviceKind.RecessedLight).Count);
        Assert.Empty(visit.Faults.Concat(await visit.AccessibilityProblemsAsync()));
    }

    private static Task CountAsync(IPage page, int rooms) =>
        Assertions.Expect(page.Locator("table.roomgrid tfoot")).ToContainTextAsync(rooms == 1 ? "1 room" : $"{rooms} rooms");
}
