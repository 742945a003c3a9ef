using Estimator.Data.Databases;

namespace Estimator.Data.Jobs;

/// <summary>Ids of stored jobs: the job file's own where it is free, else the next one like it.</summary>
internal static class JobIds
{
    /// <summary>Longest id of a job or an edit, in characters.</summary>
    internal const int Longest = 100;

    /// <summary>The wanted id as it can be stored.</summary>
    internal static string Storable(string wanted)
    {
        var id = StorableText.Of(wanted.Trim());
        return id.Length == 0 ? "job" : Cut(id, Longest);
    }

    /// <summary>The first of id, id-2, id-3 ... that is not taken.</summary>
    internal static string Free(string id, IReadOnlySet<string> taken)
    {
        for (var number = 1; ; number++)
        {
            var suffix = number == 1 ? "" : FormattableString.Invariant($"-{number}");
            var candidate = Cut(id, Longest - suffix.Length) + suffix;
            if (!taken.Contains(candidate))
            {
                return candidate;
            }
        }
    }

    // Never in the middle of a surrogate pair.
    private static string Cut(string id, int most) => id.Length <= most ? id : id[..(char.IsHighSurrogate(id[most - 1]) ? most - 1 : most)];
}
