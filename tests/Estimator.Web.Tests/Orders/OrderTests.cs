using System.Text;
using Bunit;
using Estimator.Data.Companies;
using Estimator.Data.Jobs;
using Estimator.Engine.Explanations;
using Estimator.Web.Catalogues;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;
using Estimator.Web.Orders;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Web.Tests.Orders;

public sealed class OrderTests : WebContext
{
    [Fact]
    public async Task Order_OfTwoJobs_IsWhatTheEngineBuysForBoth()
    {
        var order = await OrderAsync();

        var alone = order.Papers.Sum(p => p.Estimate.Purchase.Total.Value);
        Assert.Equal(2, order.Papers.Length);
        Assert.InRange(order.Plan.Total.Value, 1, alone);
        Assert.All(order.Plan.Lines, l => Assert.Equal(order.Papers.SelectMany(p => p.Estimate.Takeoff.Lines).Where(t => t.ItemId == l.ItemId && !t.OwnerSupplied).Sum(t => t.Quantity.Value), l.Needed.Value));
    }

    // Every figure of the order opens down to what one of the jobs stated, a cited row or a count, and computes again.
    [Fact]
    public async Task Explanation_OfEachLine_NamesTheJobsAndEndsInLeaves()
    {
        var order = await OrderAsync();
        var names = order.Papers.Select(p => p.Saved.Job.Name).ToList();
        foreach (var line in order.Plan.Lines)
        {
            var needs = order.Source.Book[line.Needed.Node];
            Assert.All(needs.Inputs, input => Assert.Contains(names, n => order.Source.Book[input].Label.StartsWith(n, StringComparison.Ordinal)));
        }

        var (seen, open) = (new HashSet<NodeRef>(), new Stack<NodeRef>([order.Plan.Total.Node]));
        while (open.TryPop(out var at))
        {
            var node = order.Source.Book[at];
            Assert.True(!node.Inputs.IsEmpty || node.Operation is Operation.Given or Operation.Row or Operation.Constant or Operation.Sum, $"{node.Label} ends in {node.Operation}");
            Assert.True(node.Operation is not Operation.Given || order.Source.JobOf(at) is not null, $"nobody stated {node.Label}");
            foreach (var input in node.Inputs.Where(seen.Add))
            {
                open.Push(input);
            }
        }

        Assert.True(seen.Count > 200, $"only {seen.Count} figures");
    }

    [Theory]
    [InlineData("order.xlsx", "PK")]
    [InlineData("order.csv", "\uFEFFitem,description")]
    [InlineData("cut-plan.csv", "\uFEFFitem,coil")]
    public async Task HandOut_SavedJobs_IsTheFile(string file, string start)
    {
        var ids = await SavedAsync();
        var given = Assert.IsType<FileContentHttpResult>(await HandOutAsync(file, ids));
        Assert.StartsWith(start, Encoding.UTF8.GetString(given.FileContents.Span), StringComparison.Ordinal);
    }

    [Fact]
    public async Task HandOut_NothingSuch_IsNotFound()
    {
        await OpenSampleAsync();
        Assert.IsType<NotFound>(await HandOutAsync("order.csv", [Desk.Job.Id]));
        Assert.IsType<NotFound>(await HandOutAsync("order.csv", ["nobody"]));
        Assert.IsType<NotFound>(await HandOutAsync("secret.txt", await SavedAsync()));
    }

    [Fact]
    public async Task Page_JobsMarkedInTheAddress_ShowsTheirTotal()
    {
        var ids = await SavedAsync();
        Services.GetRequiredService<Microsoft.AspNetCore.Components.NavigationManager>().NavigateTo(new OrderAsk([.. ids]).Address("/order"));

        var page = Render<OrderPage>();

        await page.WaitForElementAsync(".order tfoot .n", TimeSpan.FromSeconds(30));
        var order = await OrderAsync(ids);
        Assert.Equal(American.Dollars(order.Plan.Total.Value), page.Find(".order tfoot .n").TextContent);
        Assert.Equal(2, page.FindAll("input[data-job][checked]").Count);
    }

    private async Task<string[]> SavedAsync()
    {
        List<string> ids = [];
        foreach (var sample in new[] { "basement-finish", "two-storey-house" })
        {
            await OpenSampleAsync(sample);
            await Desk.SaveRevisionAsync("", Token);
            ids.Add(Desk.Job.Id);
        }

        return [.. ids];
    }

    private async Task<JointOrder> OrderAsync(string[]? ids = null) => JointOrder.Of(
        await OrderFiles.PapersAsync(ids ?? await SavedAsync(), Services.GetRequiredService<JobStore>(), Services.GetRequiredService<EstimateShelf>(), Token), Services.GetRequiredService<CatalogueShelf>().Current);

    private Task<IResult> HandOutAsync(string file, string[] jobs) => OrderFiles.HandOutAsync(
        file, jobs, null, null, null, null, null, Services.GetRequiredService<OrderDesk>(), Services.GetRequiredService<CompanyStore>(), Token);
}
