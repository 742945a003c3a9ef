using Bunit;
using Estimator.Data;
using Estimator.Data.Databases;
using Estimator.Web.Catalogues;
using Estimator.Web.Contracts;
using Estimator.Web.Explanations;
using Estimator.Web.Jobs;
using Estimator.Web.Orders;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor.Services;

namespace Estimator.Web.Tests;

/// <summary>What every component test shares: the pages' own services on a database of its own.</summary>
public abstract class WebContext : BunitContext, IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("estimator-web-").FullName;

    protected WebContext()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddMudServices();
        Services.AddSingleton(TimeProvider.System);
        Services.AddEstimatorData(DatabaseAddress.Sqlite(Path.Combine(_folder, "test.db")));
        Services.AddSingleton<CatalogueShelf>();
        Services.AddSingleton<LocalPriceShelf>();
        Services.AddSingleton<EstimateShelf>();
        Services.AddSingleton<JobNews>();
        Services.AddScoped<JobDesk>();
        Services.AddScoped<Explainer>();
        Services.AddScoped<OrderDesk>();
        Services.AddScoped<ContractDesk>();
    }

    protected static CancellationToken Token => Xunit.TestContext.Current.CancellationToken;

    protected JobDesk Desk => Services.GetRequiredService<JobDesk>();

    public async ValueTask InitializeAsync() => await Services.GetRequiredService<DatabaseStart>().RunAsync(Token);

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing)
        {
            Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
            Directory.Delete(_folder, recursive: true);
        }
    }

    /// <summary>Stores a sample and opens it at the desk, estimate included.</summary>
    protected async Task<PricedJob> OpenSampleAsync(string name = "basement-finish")
    {
        var stored = await Services.GetRequiredService<Data.Jobs.JobStore>().CreateAsync(JobStarts.Sample(name), JobDesk.Me, Token);
        Assert.True(await Desk.OpenAsync(stored.Job.Id, Token));
        return await PricedAsync();
    }

    /// <summary>The desk's estimate, once it is of the newest version.</summary>
    protected async Task<PricedJob> PricedAsync()
    {
        for (var i = 0; i < 600 && (Desk.Working || Desk.Priced is null); i++)
        {
            await Task.Delay(50, Token);
        }

        return Desk.Priced ?? throw new TimeoutException("No estimate within 30 s.");
    }
}
