using Estimator.Engine.Catalogue;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Learning;

/// <summary>The key of hours that are learned: a phase, or a class of items in it.</summary>
public static class UnitKey
{
    private const char Within = '/';

    /// <summary>The key of a phase.</summary>
    public static string Of(WorkPhase phase) => Words.Snake(phase);

    /// <summary>The key of a class in a phase, such as rough_in/cable.</summary>
    /// <param name="phase">Key of the phase.</param>
    /// <param name="word">The class.</param>
    public static string Of(string phase, string word) => $"{phase}{Within}{word}";

    /// <summary>Key of the phase that a key belongs to.</summary>
    public static string PhaseOf(string key) => key.Split(Within)[0];

    /// <summary>The class that a key is of; null for a whole phase.</summary>
    public static string? ClassOf(string key) => key.Split(Within) is [_, var word] ? word : null;

    /// <summary>Whether a key is that of a class in a phase.</summary>
    /// <param name="key">The key.</param>
    /// <param name="phase">Key of the phase.</param>
    public static bool IsWithin(string key, string phase) => ClassOf(key) is not null && PhaseOf(key) == phase;
}
