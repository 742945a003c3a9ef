using System.Collections.Immutable;
using Estimator.Data.Companies;
using Estimator.Data.Databases;
using Estimator.Data.Jobs;
using Estimator.Data.Prices;
using Estimator.Data.Revisions;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Data.Editor;

/// <summary>Makes the database that is kept as a fixture of a release: a job with two edits and a revision, the company's settings, a price.</summary>
internal static class SampleDatabase
{
    internal static async Task MakeAsync(ServiceProvider services)
    {
        await services.GetRequiredService<DatabaseStart>().RunAsync();
        var store = services.GetRequiredService<JobStore>();
        var created = await store.CreateAsync(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 4)), "maker");
        await store.AppendAsync("small", 0, JobEditing.Between(created.Job, created.Job with { Name = "Spare room" }, "e1", "Name: Spare room"), "maker");
        var edit = JobEditing.Between(created.Job, created.Job with { Notes = "Attic is open." }, "e2", "Notes");
        var appended = (Appended)await store.AppendAsync("small", 1, edit, "maker");
        var files = Catalogues.ShippedFiles.ToImmutableSortedDictionary(StringComparer.Ordinal);
        await store.SaveRevisionAsync("small", new NewRevision(2, SmallJobs.Estimate(appended.Job), files, "First price", "maker"));
        var companies = services.GetRequiredService<CompanyStore>();
        await companies.SaveAsync(await companies.LoadAsync() with { Name = "Sample Wiring", AddressLines = ["1 Sample Street", "Sampletown"] });
        await services.GetRequiredService<LocalPriceStore>().SaveAsync(
            new LocalPrice { Item = "nm_b-12-2", Supplier = "sample-c", PackSize = 250, Price = Money.FromDollars(101.25m), AsOf = new DateOnly(2026, 11, 1) });

        // One file, without a write-ahead log beside it.
        SqliteConnection.ClearAllPools();
    }
}
