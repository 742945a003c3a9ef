using Estimator.TestKit;

namespace Estimator.Browser.Tests;

/// <summary>The pictures of the main pages that the README shows, drawn from the samples. REWRITE_PICTURES=1 puts them in place; look at each before it is kept.</summary>
public sealed class PicturesTests(RunningPages pages)
{
    private static string Folder => Path.Combine(TestData.Repository, "src", "Estimator.Web", "Pictures");

    [Theory]
    [InlineData("overview", Screen.Desk, false)]
    [InlineData("rooms", Screen.Desk, false)]
    [InlineData("plan", Screen.Desk, false)]
    [InlineData("circuits", Screen.Desk, false)]
    [InlineData("checks", Screen.Desk, false)]
    [InlineData("boxes", Screen.Desk, false)]
    [InlineData("bid", Screen.Desk, true)]
    [InlineData("overview", Screen.Phone, false)]
    public async Task Picture_OfAMainPage_StandsInTheReadme(string slug, Screen screen, bool night)
    {
        await using var visit = await pages.OpenAsync(screen, night);
        var id = await visit.StartSampleAsync("Two-storey house");
        await visit.GoAsync($"/jobs/{Uri.EscapeDataString(id)}/{slug}{(slug == "boxes" ? "?circuit=21" : "")}");
        await visit.PriceAsync();
        await visit.Page.WaitForTimeoutAsync(800);
        var name = $"{slug}{(screen is Screen.Phone ? "-phone" : "")}{(night ? "-night" : "")}.png";
        var picture = await visit.Page.ScreenshotAsync();
        if (Environment.GetEnvironmentVariable("REWRITE_PICTURES") == "1")
        {
            await File.WriteAllBytesAsync(Path.Combine(Folder, name), picture, TestContext.Current.CancellationToken);
        }

        Assert.Contains($"src/Estimator.Web/Pictures/{name}", await File.ReadAllTextAsync(Path.Combine(TestData.Repository, "README.md"), TestContext.Current.CancellationToken), StringComparison.Ordinal);
        var kept = await File.ReadAllBytesAsync(Path.Combine(Folder, name), TestContext.Current.CancellationToken);
        Assert.Equal(Size(kept), Size(picture));
        Assert.Empty(visit.Faults.Concat(await visit.AccessibilityProblemsAsync()));
    }

    // Width and height stand in the first chunk of a PNG file.
    private static (int Width, int Height) Size(byte[] png) =>
        (System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)), System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20)));
}
