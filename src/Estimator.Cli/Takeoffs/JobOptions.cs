using System.CommandLine;
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
        var text = path.StartsWith(Sample, StringComparison.Ordinal) ? Samples.Read(path[Sample.Length..]) : Files.Read(path);
        var reading = JobFile.Read(text, path);
        return reading.Ok ? reading.Job : throw new WrongInputException(string.Join('\n', reading.Problems));
    }

    internal static PartsCatalogue ReadCatalogue(string? folder)
    {
        var files = folder is null ? BuiltIn() : FromFolder(folder);
        var catalogue = PartsCatalogue.Read(files);
        return catalogue.Ok ? catalogue.Value : throw new WrongInputException(catalogue.Problem);
    }

    private static Dictionary<string, string> BuiltIn() =>
        PartsCatalogue.FileNames.ToDictionary(n => n, n => Resources.Read($"catalog/{n}"), StringComparer.Ordinal);

    private static Dictionary<string, string> FromFolder(string folder)
    {
        if (!Directory.Exists(folder))
        {
            throw new WrongInputException($"--catalog: there is no folder {folder}; a folder with {string.Join(", ", PartsCatalogue.FileNames)} is accepted.");
        }

        return PartsCatalogue.FileNames.Where(n => File.Exists(Path.Combine(folder, n))).ToDictionary(n => n, n => Files.Read(Path.Combine(folder, n)), StringComparer.Ordinal);
    }
}
