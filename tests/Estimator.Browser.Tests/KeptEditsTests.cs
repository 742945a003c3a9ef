using Estimator.Cli;
using Estimator.Engine;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Wiring;
using Estimator.TestKit;

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
    public async Task Export_OfAJob_IsReadByTheEngine()
    {
        await using var visit = await pages.OpenAsync(Screen.Desk);
        var id = await visit.StartSampleAsync("Basement finish");
        var text = await visit.Page.EvaluateAsync<string>("async address => await (await fetch(address)).text()", $"/jobs/{Uri.EscapeDataString(id)}/file");
        Assert.True(JobFile.Read(text, "export.json").Ok);
    }
}
