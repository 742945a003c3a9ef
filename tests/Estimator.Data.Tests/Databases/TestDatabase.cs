using Estimator.Data.Companies;
using Estimator.Data.Databases;
using Estimator.Data.Jobs;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Data.Tests.Databases;

/// <summary>A database of its own for one test class. Each test works in a company of its own, so that none sees another's rows.</summary>
public abstract class TestDatabase : IAsyncLifetime
{
    private static long _company = 100;

    /// <summary>The address as the editor program takes it.</summary>
    public abstract string AddressText { get; }

    public abstract DatabaseAddress Address { get; }

    public abstract ValueTask InitializeAsync();

    public abstract ValueTask DisposeAsync();

    public ServiceProvider Services(CurrentCompany? company = null, TimeProvider? clock = null)
    {
        var services = new ServiceCollection();
        services.AddSingleton(company ?? CurrentCompany.Own);
        services.AddSingleton(clock ?? TimeProvider.System);
        return services.AddEstimatorData(Address).BuildServiceProvider();
    }

    /// <summary>The services of a new company, its database up to date.</summary>
    public async Task<ServiceProvider> NewCompanyAsync(TimeProvider? clock = null)
    {
        var services = Services(new CurrentCompany(Interlocked.Increment(ref _company)), clock);
        await services.GetRequiredService<DatabaseStart>().RunAsync(TestContext.Current.CancellationToken);
        return services;
    }

    public async Task<JobStore> NewStoreAsync() => (await NewCompanyAsync()).GetRequiredService<JobStore>();
}
