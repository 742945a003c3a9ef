using System.Diagnostics.CodeAnalysis;

namespace Estimator.Engine.Measures;

/// <summary>What became of text that a person typed: a value, or a sentence that says what is wrong and what is accepted.</summary>
/// <typeparam name="T">The value's type.</typeparam>
public sealed class Parsed<T>
{
    private readonly T? _value;

    private Parsed(T? value, string? problem) => (_value, Problem) = (value, problem);

    /// <summary>Whether the text was understood.</summary>
    [MemberNotNullWhen(false, nameof(Problem))]
    public bool Ok => Problem is null;

    /// <summary>What was found and what is accepted; null when the text was understood.</summary>
    public string? Problem { get; }

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">The text was not understood; the message is the problem.</exception>
    public T Value => Ok ? _value! : throw new InvalidOperationException(Problem);

    /// <summary>An understood text.</summary>
    [SuppressMessage("Design", "CA1000", Justification = "A named factory reads better than a constructor here.")]
    public static Parsed<T> Success(T value) => new(value, null);

    /// <summary>A text that was not understood.</summary>
    [SuppressMessage("Design", "CA1000", Justification = "A named factory reads better than a constructor here.")]
    public static Parsed<T> Failure(string problem) => new(default, problem);
}
