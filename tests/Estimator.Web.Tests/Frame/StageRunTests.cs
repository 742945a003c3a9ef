using Bunit;
using Estimator.Web.Frame;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Web.Tests.Frame;

public sealed class StageRunTests : WebContext
{
    [Fact]
    public async Task Navigate_ToAnotherStage_MarksItOnTheRun()
    {
        await OpenSampleAsync();
        var run = Render<StageRun>();
        var navigation = Services.GetRequiredService<NavigationManager>();

        navigation.NavigateTo(Stages.Address(Desk.Job.Id, "bid"));

        run.WaitForAssertion(() => Assert.StartsWith("Bid", run.Find("[aria-current=page]").TextContent.Trim(), StringComparison.Ordinal));
        Assert.Single(run.FindAll("[aria-current=page]"));
    }
}
