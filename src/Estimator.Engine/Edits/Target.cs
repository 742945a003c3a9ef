using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Edits;

/// <summary>The thing of a job that a change acts on, named by the job file's own words and by stable ids, never by position.</summary>
/// <remarks>
/// Steps divided by strokes, as in <c>levels/L1/rooms/R2</c>, <c>panels/P1/circuits/C3</c>, <c>equipment/E1</c>, <c>practice</c>; a room's count of devices by kind and
/// what it serves, <c>levels/L1/rooms/R2/counts/duplex_receptacle-room</c>. The job itself is the empty text. In an id a stroke is written <c>~1</c> and a tilde
/// <c>~0</c>. Source: RFC 6901, section 3.
/// </remarks>
public sealed record Target
{
    private Target(string text) => Text = text;

    /// <summary>The job itself.</summary>
    public static Target Job { get; } = new("");

    /// <summary>The steps as one text, escaped.</summary>
    public string Text { get; }

    /// <summary>The steps, without escapes.</summary>
    public ImmutableArray<string> Steps => Text.Length == 0 ? [] : [.. Text.Split('/').Select(s => s.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal))];

    /// <summary>The target that these steps lead to.</summary>
    public static Target At(params ReadOnlySpan<string> steps)
    {
        var target = Job;
        foreach (var step in steps)
        {
            target = target.Then(step);
        }

        return target;
    }

    /// <summary>A target from its text.</summary>
    public static Parsed<Target> Parse(string text)
    {
        for (var i = text.IndexOf('~', StringComparison.Ordinal); i >= 0; i = text.IndexOf('~', i + 1))
        {
            if (i + 1 == text.Length || text[i + 1] is not ('0' or '1'))
            {
                return Parsed<Target>.Failure($"found '~' at place {i + 1} of the target; accepted: steps divided by '/', with ~0 for a tilde and ~1 for a stroke in an id.");
            }
        }

        return Parsed<Target>.Success(new Target(text));
    }

    /// <summary>What one more step leads to.</summary>
    public Target Then(string step)
    {
        var escaped = step.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);
        return new Target(Text.Length == 0 ? escaped : $"{Text}/{escaped}");
    }

    /// <inheritdoc/>
    public override string ToString() => Text.Length == 0 ? "the job" : Text;
}
