using System.Collections.Immutable;
using System.CommandLine;
using Estimator.Engine;
using Estimator.Engine.Catalogue;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;

namespace Estimator.Cli.Takeoffs;

/// <summary>The argument and options that verbs on jobs share.</summary>
internal static class JobOptions
{
    internal static Option<string?> Catalogue() => new("--catalog") { Description = "Folder of CSV files that replace the built-in catalogue." };

    internal static Option<string?> Workbook(string description) => new("--workbook") { Description = description };

    internal static Argument<string> JobPath() => new("job") { Description = "Job file, or sample:NAME for a sample." };

    internal static Job ReadJob(string path)
    {
        const string Sample = "sample:";
        var text = path.StartsWith(Sample, StringComparison.Ordinal) ? Samples.Read(path[Sample.Length..]) : Cli.Files.Read(path);
        var reading = JobFile.Read(text, path);
        return reading.Ok ? reading.Job : throw new WrongInputException(string.Join('\n', reading.Problems));
    }

    /// <summary>The estimate of a job: on the named folder's catalogue, else the one kept with the job, else the built-in one.</summary>
    internal static JobEstimate Estimate(string path, string? folder)
    {
        var job = ReadJob(path);
        return JobEstimate.Compute(job, CatalogueOf(job, folder));
    }

    internal static PartsCatalogue ReadCatalogue(string? folder) => Catalogue(folder is null ? BuiltIn() : FromFolder(folder));

    /// <summary>The job with the catalogue and the engine that it is priced with, so that the price can be made again anywhere.</summary>
    internal static Job Kept(Job job, string? folder) => job with
    {
        EngineHash = EngineHash.Value,
        CatalogueSnapshot = Files(folder, job).ToImmutableSortedDictionary(f => f.Key, f => new CsvText(f.Value), StringComparer.Ordinal),
    };

    /// <summary>The catalogue that a job is priced with.</summary>
    internal static PartsCatalogue CatalogueOf(Job job, string? folder) => Catalogue(Files(folder, job));

    private static PartsCatalogue Catalogue(Dictionary<string, string> files)
    {
        var catalogue = PartsCatalogue.Read(files);
        return catalogue.Ok ? catalogue.Value : throw new WrongInputException(catalogue.Problem);
    }

    private static Dictionary<string, string> Files(string? folder, Job job) => folder is not null ? FromFolder(folder)
        : job.CatalogueSnapshot.IsEmpty ? BuiltIn()
        : job.CatalogueSnapshot.ToDictionary(f => f.Key, f => f.Value.ToString(), StringComparer.Ordinal);

    private static Dictionary<string, string> BuiltIn() =>
        PartsCatalogue.FileNames.ToDictionary(n => n, n => Resources.Read($"catalog/{n}"), StringComparer.Ordinal);

    private static Dictionary<string, string> FromFolder(string folder)
    {
        if (!Directory.Exists(folder))
        {
            throw new WrongInputException($"--catalog: there is no folder {folder}; a folder with {string.Join(", ", PartsCatalogue.FileNames)} is accepted.");
        }

        return PartsCatalogue.FileNames.Where(n => File.Exists(Path.Combine(folder, n))).ToDictionary(n => n, n => Cli.Files.Read(Path.Combine(folder, n)), StringComparer.Ordinal);
    }
}
