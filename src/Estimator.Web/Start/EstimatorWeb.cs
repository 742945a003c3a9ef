using System.Globalization;
using Estimator.Data;
using Estimator.Data.Databases;
using Estimator.Web.Catalogues;
using Estimator.Web.Contracts;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;
using Estimator.Web.Orders;
using Estimator.Web.Revisions;
using MudBlazor.Services;

namespace Estimator.Web.Start;

/// <summary>Registers the pages and puts them in their order.</summary>
public static class EstimatorWeb
{
    /// <summary>Registers everything that the pages need.</summary>
    public static WebApplicationBuilder AddEstimatorWeb(this WebApplicationBuilder builder)
    {
        // Numbers and dates are American whatever the machine says; the engine itself stays invariant.
        CultureInfo.DefaultThreadCurrentCulture = American.Culture;
        CultureInfo.DefaultThreadCurrentUICulture = American.Culture;

        // Without this the files of the libraries are missing whenever the program is started outside the Development environment.
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.UseUrls(ListeningAddress.Stated(builder.Configuration));
        builder.Logging.AddFilter("Microsoft", LogLevel.Warning).AddFilter("System", LogLevel.Warning);

        var place = DataPlace.Of(builder.Configuration);
        builder.Services.AddSingleton(place);
        builder.Services.AddSingleton(TimeProvider.System);
        if (place.Embedded)
        {
            // A page of another site must not reach this server under a name of its own.
            builder.Services.AddHostFiltering(o => o.AllowedHosts = ["127.0.0.1", "localhost", "[::1]"]);
        }

        builder.Services.AddEstimatorData(place.Embedded ? DatabaseAddress.Sqlite(place.File) : DatabaseAddress.Postgres(place.ConnectionString!));
        builder.Services.AddMudServices();
        builder.Services.AddRazorComponents().AddInteractiveServerComponents();
        builder.Services.AddSingleton<CatalogueShelf>();
        builder.Services.AddSingleton<LocalPriceShelf>();
        builder.Services.AddHostedService(p => p.GetRequiredService<LocalPriceShelf>());
        builder.Services.AddSingleton<EstimateShelf>();
        builder.Services.AddSingleton<JobNews>();
        builder.Services.AddScoped<JobDesk>();
        builder.Services.AddScoped<Explainer>();
        builder.Services.AddScoped<OrderDesk>();
        builder.Services.AddScoped<ContractDesk>();
        return builder;
    }

    /// <summary>Puts the pages in their order.</summary>
    public static WebApplication UseEstimatorWeb(this WebApplication app)
    {
        app.UseExceptionHandler("/fault", createScopeForErrors: true);
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.Use(PageHeaders.AddAsync);
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode();
        app.MapJobFiles();
        app.MapRevisionFiles();
        app.MapOrderFiles();
        app.MapPurchaseOrderFiles();
        app.MapContractFiles();
        return app;
    }
}
