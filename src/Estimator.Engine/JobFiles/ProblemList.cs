using System.Collections.Immutable;
using System.Globalization;
using Estimator.Engine.Measures;

namespace Estimator.Engine.JobFiles;

/// <summary>Collects problems of one file.</summary>
internal sealed class ProblemList(string file)
{
    private readonly List<JobProblem> _problems = [];

    internal bool Any => _problems.Count > 0;

    internal void Add(string path, string found, string accepted) => _problems.Add(new JobProblem(file, path, found, accepted));

    internal void Range(string path, decimal? found, decimal least, decimal most, string what)
    {
        if (found < least || found > most)
        {
            Add(path, string.Create(CultureInfo.InvariantCulture, $"{found} {what}"), string.Create(CultureInfo.InvariantCulture, $"{least} to {most} {what}"));
        }
    }

    internal void Length(string path, Length? found, Length least, Length most)
    {
        if (found is { } length && (length < least || length > most))
        {
            Add(path, length.ToString(), $"{least} to {most}");
        }
    }

    internal ImmutableArray<JobProblem> First(int most) => [.. _problems.Take(most)];
}
