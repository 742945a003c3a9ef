using Estimator.Data.Databases;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Companies;

/// <summary>Keeps the settings of the current company.</summary>
public sealed class CompanyStore
{
    private readonly IDbContextFactory<EstimatorContext> _contexts;

    internal CompanyStore(IDbContextFactory<EstimatorContext> contexts) => _contexts = contexts;

    /// <summary>The settings; empty ones until the first save.</summary>
    /// <param name="token">Ends the wait.</param>
    public async Task<CompanySettings> LoadAsync(CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        return Settings(await db.Companies.AsNoTracking().SingleAsync(token));
    }

    /// <summary>Saves the settings, unless somebody else saved since they were read.</summary>
    /// <param name="settings">What to save, with the version that it was read at.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task<Saving<CompanySettings>> SaveAsync(CompanySettings settings, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(settings);
        await using (var db = await _contexts.CreateDbContextAsync(token))
        {
            var row = await db.Companies.SingleAsync(token);
            if (row.Version == settings.Version)
            {
                row.Name = StorableText.Of(settings.Name);
                row.AddressLines = [.. settings.AddressLines.Select(StorableText.Of)];
                row.Licence = StorableText.Of(settings.Licence);
                row.RatesJson = StartingRates.Write(settings.Rates, settings.Payment);
                try
                {
                    await db.SaveChangesAsync(token);
                    return new Saving<CompanySettings>(true, Settings(row));
                }
                catch (DbUpdateException e) when (LostRace.Is(e))
                {
                    // What the other one saved is read below, in a context of its own.
                }
            }
        }

        return new Saving<CompanySettings>(false, await LoadAsync(token));
    }

    private static CompanySettings Settings(CompanyRow row)
    {
        var (rates, payment) = StartingRates.Read(row.RatesJson);
        return new CompanySettings { Name = row.Name, AddressLines = [.. row.AddressLines], Licence = row.Licence, Rates = rates, Payment = payment, Version = row.Version };
    }
}
