using System.Text.Json;

namespace Estimator.Engine.JobFiles;

/// <summary>What is wrong with a job file: where, what was found, what is accepted.</summary>
/// <param name="File">The file.</param>
/// <param name="Path">JSON path, such as <c>$.levels[0].rooms[2].size.width</c>.</param>
/// <param name="Found">What was found.</param>
/// <param name="Accepted">What is accepted.</param>
public sealed record JobProblem(string File, string Path, string Found, string Accepted)
{
    private const int Shown = 300;

    /// <summary>One sentence.</summary>
    public override string ToString() => $"{File}: {Path}: found {Found}; accepted: {Accepted}.";

    internal static JobProblem Of(JsonException e, string file)
    {
        if (e is JobJsonException own)
        {
            return new JobProblem(file, e.Path ?? "$", own.Found, own.Accepted);
        }

        // The reader's own words, without its path and line, which stand beside it.
        var words = e.Message;
        var end = words.IndexOf(" Path:", StringComparison.Ordinal);
        words = end > 0 ? words[..end] : words;
        var line = e.LineNumber is { } number ? $" (line {number + 1})" : "";
        return new JobProblem(file, e.Path ?? "$", (words.Length > Shown ? words[..Shown] : words).TrimEnd('.') + line, Hint(words));
    }

    private static string Hint(string words) => words switch
    {
        _ when words.Contains("could not be mapped", StringComparison.Ordinal) => "only the fields that the schema of this object lists: print it with the verb schema",
        _ when words.Contains("missing required", StringComparison.Ordinal) => "all required fields of this object",
        _ when words.Contains("depth", StringComparison.Ordinal) => $"nesting to {JobLimits.Depth} levels",
        _ => "the form that the schema gives: print it with the verb schema",
    };
}
