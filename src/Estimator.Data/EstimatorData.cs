using Estimator.Data.Actuals;
using Estimator.Data.Companies;
using Estimator.Data.Contracts;
using Estimator.Data.Databases;
using Estimator.Data.Jobs;
using Estimator.Data.Orders;
using Estimator.Data.Prices;
using Estimator.Data.Stock;
using Estimator.Data.Suppliers;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace Estimator.Data;

/// <summary>Registers the stores.</summary>
public static class EstimatorData
{
    /// <summary>Adds the stores on a database. Run <see cref="DatabaseStart"/> once before they are used.</summary>
    /// <param name="services">The services. A <see cref="CurrentCompany"/> registered before is kept; else the program's own company is at work.</param>
    /// <param name="address">Where the database is.</param>
    public static IServiceCollection AddEstimatorData(this IServiceCollection services, DatabaseAddress address)
    {
        services.TryAddSingleton(TimeProvider.System);
        services.TryAddSingleton(CurrentCompany.Own);
        services.AddSingleton(address);
        services.AddScoped<IDbContextFactory<EstimatorContext>>(p => new ContextFactory(address, p.GetRequiredService<CurrentCompany>()));
        services.AddScoped(p => new DatabaseStart(Contexts(p), address));
        services.AddScoped(p => new JobStore(Contexts(p), p.GetRequiredService<CurrentCompany>(), p.GetRequiredService<TimeProvider>()));
        services.AddScoped(p => new CompanyStore(Contexts(p)));
        services.AddScoped(p => new LocalPriceStore(Contexts(p), p.GetRequiredService<CurrentCompany>()));
        services.AddScoped(p => new SupplierStore(Contexts(p), p.GetRequiredService<CurrentCompany>()));
        services.AddScoped(p => new SupplierPriceStore(Contexts(p), p.GetRequiredService<CurrentCompany>(), p.GetRequiredService<TimeProvider>()));
        services.AddScoped(p => new StockStore(Contexts(p), p.GetRequiredService<CurrentCompany>()));
        services.AddScoped(p => new OrderStore(Contexts(p), p.GetRequiredService<CurrentCompany>(), p.GetRequiredService<TimeProvider>()));
        services.AddScoped(p => new ContractStore(Contexts(p), p.GetRequiredService<CurrentCompany>(), p.GetRequiredService<TimeProvider>()));
        services.AddScoped(p => new ActualsStore(Contexts(p), p.GetRequiredService<CurrentCompany>()));
        services.AddScoped(p => new OwnUnitStore(Contexts(p), p.GetRequiredService<CurrentCompany>(), p.GetRequiredService<TimeProvider>()));
        return services;
    }

    private static IDbContextFactory<EstimatorContext> Contexts(IServiceProvider provider) => provider.GetRequiredService<IDbContextFactory<EstimatorContext>>();
}
