using System.Collections.Immutable;
using Estimator.Data.Companies;
using Estimator.Data.Jobs;
using Estimator.Data.Revisions;
using Estimator.Data.Tests.Databases;
using Estimator.Data.Tests.Jobs;
using Estimator.Engine;
using Estimator.Engine.Catalogue;
using Estimator.Engine.House;
using Estimator.TestKit;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using static Estimator.Data.Tests.Jobs.Editing;

namespace Estimator.Data.Tests.Revisions;

/// <summary>Saved revisions, and what plain SQL sums over them, on either database.</summary>
public abstract class RevisionTests(TestDatabase database)
{
    private static readonly ImmutableSortedDictionary<string, string> Files = Catalogues.ShippedFiles.ToImmutableSortedDictionary(StringComparer.Ordinal);
    private static readonly Job Bedroom = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 4), (DeviceKind.CeilingLight, 1)) with { Id = "bedroom" };
    private static readonly Job Bath = SmallJobs.OneRoom(RoomKind.Bathroom, (DeviceKind.DuplexReceptacle, 2), (DeviceKind.CeilingLight, 2)) with { Id = "bath" };

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Lines_OfTwoJobs_AreSummedByPlainSql()
    {
        await using var services = await database.NewCompanyAsync();
        var store = services.GetRequiredService<JobStore>();
        JobEstimate[] estimates = [await SavedAsync(store, Bedroom), await SavedAsync(store, Bath)];
        var company = services.GetRequiredService<CurrentCompany>().Id;

        Assert.Equal(estimates.Sum(e => e.Wiring.Runs.Sum(r => (long)r.Total.Value)), await SumAsync("length_nm", "revision_cables"));
        Assert.Equal(estimates.Sum(e => (long)e.Wiring.Runs.Count(r => r.Cable.ItemId == "nm_b-12-2")), await SumAsync("runs", "revision_cables", "item = 'nm_b-12-2'"));
        Assert.Equal(estimates.Sum(e => (long)e.Wiring.Boxes.Length), await SumAsync("boxes", "revision_boxes"));
        Assert.Equal(estimates.Sum(e => (long)e.Wiring.Circuits.Length), await SumAsync("breakers", "revision_breakers"));
        Assert.Equal(Taken(l => l.Category == "connector") / 10_000, await SumAsync("connectors", "revision_connectors"));
        Assert.Equal(Taken(l => l.ItemId == "plate-1-duplex"), await SumAsync("quantity_e4", "revision_takeoff_lines", "item = 'plate-1-duplex'"));
        Assert.Equal(Taken(l => l.Unit == "each"), await SumAsync("quantity_e4", "revision_takeoff_lines", "unit = 'each'"));
        Assert.Equal(estimates.Sum(e => (long)(e.Bid.Price.Value * 10_000)), await SumAsync("likely_e4", "revisions"));
        foreach (var (phase, word) in new[] { (WorkPhase.Layout, "layout"), (WorkPhase.RoughIn, "rough_in"), (WorkPhase.TrimOut, "trim_out"), (WorkPhase.TestAndInspection, "test_and_inspection") })
        {
            Assert.Equal(estimates.Sum(e => (long)(e.Labor.ByPhase[phase].Value * 10_000)), await SumAsync("hours_e4", "revision_labor", $"phase = '{word}'"));
        }

        long Taken(Func<Engine.Takeoff.TakeoffLine, bool> of) => estimates.Sum(e => e.Takeoff.Lines.Where(of).Sum(l => (long)(l.Quantity.Value * 10_000)));

        async Task<long> SumAsync(string column, string table, string where = "1 = 1")
        {
            await using var db = await services.GetRequiredService<IDbContextFactory<Data.Databases.EstimatorContext>>().CreateDbContextAsync(Token);
            await using var connection = db.Database.GetDbConnection();
            await connection.OpenAsync(Token);
            await using var command = connection.CreateCommand();
            command.CommandText = FormattableString.Invariant($"SELECT CAST(SUM({column}) AS bigint) FROM {table} WHERE company_id = {company} AND {where}");
            return Assert.IsType<long>(await command.ExecuteScalarAsync(Token));
        }
    }

    [Fact]
    public async Task Save_Twice_NumbersThemAndKeepsBothPrices()
    {
        var store = await database.NewStoreAsync();
        var first = await SavedAsync(store, Bedroom);
        var changed = (await store.AppendAsync<Appended>("bedroom", 0, Bedroom.To(Bedroom.With(r => r with { Counts = [r.Counts[0] with { Count = 6 }] }), "e1"))).Job;
        var second = SmallJobs.Estimate(changed);
        await store.SaveRevisionAsync("bedroom", new NewRevision(1, second, Files, "six", Who), Token);
        var revisions = await store.RevisionsAsync("bedroom", Token);
        Assert.Equal([(2, 1, "six"), (1, 0, "first")], revisions.Select(r => (r.Number, r.JobVersion, r.Note)));
        Assert.Equal([second.Bid.Price.Value, first.Bid.Price.Value], revisions.Select(r => r.Likely.ToDollars()));
        Assert.Equal((second.Bid.Low.Value, second.Bid.High.Value), (revisions[0].Low.ToDollars(), revisions[0].High.ToDollars()));
        Assert.Equal((second.Bid.DirectTotal.Value, second.Labor.Total.Value), (revisions[0].DirectCost.ToDollars(), revisions[0].Hours.ToHours()));
        Assert.All(revisions, r => Assert.Equal(EngineHash.Value, r.EngineHash));
        Assert.Equal((2, second.Bid.Price.Value), Assert.Single(await store.ListAsync(JobFilter.All, Token)) is var job ? (job.LastRevision, job.LastPrice!.Value.ToDollars()) : default);
    }

    [Fact]
    public async Task Load_OfARevision_GivesWhatItsPriceCanBeMadeOfAgain()
    {
        var store = await database.NewStoreAsync();
        var estimate = await SavedAsync(store, Bedroom);
        await store.AppendAsync<Appended>("bedroom", 0, Bedroom.Renamed("later", "e1"));
        var saved = (await store.LoadRevisionAsync("bedroom", 1, Token))!;
        Assert.Equal(Bedroom.Text(), saved.Job.Text());
        var again = JobEstimate.Compute(saved.Job, PartsCatalogue.Read(saved.CatalogueFiles).Value);
        Assert.Equal((estimate.Bid.Price.Value, saved.Summary.Likely.ToDollars()), (again.Bid.Price.Value, again.Bid.Price.Value));
        Assert.Null(await store.LoadRevisionAsync("bedroom", 2, Token));
    }

    [Fact]
    public async Task Save_OfAnEstimateOfAnotherVersion_Throws()
    {
        var store = await database.NewStoreAsync();
        await store.CreateAsync(Bedroom, Who, Token);
        await store.AppendAsync<Appended>("bedroom", 0, Bedroom.Renamed("later", "e1"));
        var revision = new NewRevision(1, SmallJobs.Estimate(Bedroom), Files, "", Who);
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveRevisionAsync("bedroom", revision, Token));
        Assert.Empty(await store.RevisionsAsync("bedroom", Token));
        Assert.Null(await store.SaveRevisionAsync("none", revision, Token));
    }

    [Fact]
    public async Task Delete_OfAJob_TakesItsRevisionsAlong()
    {
        var store = await database.NewStoreAsync();
        await SavedAsync(store, Bedroom);
        await store.SetArchivedAsync("bedroom", true, Token);
        await store.DeleteAsync("bedroom", Token);
        await store.CreateAsync(Bedroom, Who, Token);
        Assert.Empty(await store.RevisionsAsync("bedroom", Token));
    }

    [Fact]
    public async Task Save_ByTwoAtTheSameTime_GivesEachANumber()
    {
        var store = await database.NewStoreAsync();
        await store.CreateAsync(Bedroom, Who, Token);
        var estimate = SmallJobs.Estimate(Bedroom);
        await Task.WhenAll(Enumerable.Range(1, 6).Select(i => Task.Run(() => store.SaveRevisionAsync("bedroom", new NewRevision(0, estimate, Files, $"{i}", Who), Token))));
        Assert.Equal([6, 5, 4, 3, 2, 1], (await store.RevisionsAsync("bedroom", Token)).Select(r => r.Number));
    }

    private static async Task<JobEstimate> SavedAsync(JobStore store, Job job)
    {
        await store.CreateAsync(job, Who, Token);
        var estimate = SmallJobs.Estimate(job);
        await store.SaveRevisionAsync(job.Id, new NewRevision(0, estimate, Files, "first", Who), Token);
        return estimate;
    }
}
