using Estimator.Data.Companies;
using Estimator.Data.Databases;
using Estimator.Data.Jobs;
using Estimator.Data.Prices;
using Estimator.Data.Tests.Jobs;
using Estimator.TestKit;
using Microsoft.Extensions.DependencyInjection;
using static Estimator.Data.Tests.Jobs.Editing;

namespace Estimator.Data.Tests.Databases;

/// <summary>Databases of earlier releases, kept as files under tests/data/databases and never made again: the program of today opens and changes each.</summary>
public sealed class OldDatabaseTests
{
    private static CancellationToken Token => TestContext.Current.CancellationToken;

    public static TheoryData<string> Files { get; } = [.. Directory.GetFiles(Folder, "*.sqlite").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    private static string Folder => Path.Combine(TestData.Root, "databases");

    [Fact]
    public void Files_TheFirstRelease_IsAmongThem() => Assert.Contains("first.sqlite", Files.Select(f => f.Data));

    [Theory]
    [MemberData(nameof(Files))]
    public async Task Start_OnAnOldDatabase_KeepsWhatIsInIt(string file)
    {
        await using var database = new SqliteDatabase();
        File.Copy(Path.Combine(Folder, file), database.AddressText);
        await using var services = database.Services();
        await services.GetRequiredService<DatabaseStart>().RunAsync(Token);
        var store = services.GetRequiredService<JobStore>();
        var stored = (await store.LoadAsync("small", Token))!;

        // What the maker of these files put in.
        Assert.Equal(("Spare room", "Attic is open.", 2), (stored.Job.Name, stored.Job.Notes, stored.Version));
        Assert.Equal(["e1", "e2"], stored.Tail.Select(e => e.Edit.Id));
        Assert.Equal("Small job", (await store.LoadAtAsync("small", 0, Token))!.Name);
        var revision = (await store.LoadRevisionAsync("small", 1, Token))!;
        Assert.Equal(("First price", 2, "Spare room"), (revision.Summary.Note, revision.Summary.JobVersion, revision.Job.Name));
        Assert.True(revision.Summary.Low < revision.Summary.Likely && revision.Summary.Likely < revision.Summary.High);
        Assert.Equal(["1 Sample Street", "Sampletown"], (await services.GetRequiredService<CompanyStore>().LoadAsync(Token)).AddressLines);
        Assert.Equal(101.25m, Assert.Single(await services.GetRequiredService<LocalPriceStore>().ListAsync(Token)).Price.ToDollars());

        await store.AppendAsync<Appended>("small", 2, stored.Job.Renamed("Still edited", "e3"));
    }
}
