using System.Diagnostics.CodeAnalysis;
using System.Text.Json;

namespace Estimator.Engine.JobFiles;

/// <summary>A value that a converter refused, with what it found and what it accepts.</summary>
[SuppressMessage("Design", "CA1032", Justification = "Only converters of the job file make it, always with both sentences.")]
public sealed class JobJsonException : JsonException
{
    internal JobJsonException(string found, string accepted)
        : base($"found {found}; accepted: {accepted}") => (Found, Accepted) = (found, accepted);

    /// <summary>What was found.</summary>
    public string Found { get; }

    /// <summary>What is accepted.</summary>
    public string Accepted { get; }
}
