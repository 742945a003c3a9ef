using System.Collections.Immutable;

namespace Estimator.Cli.Calc;

/// <summary>A field of a calculator.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Form">number, whole, text, flag, numbers, texts, sizes (wire size to count), or objects.</param>
/// <param name="Words">What it is.</param>
/// <param name="Least">The smallest number that is accepted.</param>
/// <param name="Most">The largest number that is accepted.</param>
internal sealed record CalcField(string Name, string Form, string Words, decimal Least = 0m, decimal Most = CalcField.Largest)
{
    /// <summary>The largest number of a field that says nothing else.</summary>
    internal const decimal Largest = 1_000_000_000m;

    /// <summary>The largest whole number of a field that says nothing else, and the largest count of a wire size.</summary>
    internal const decimal LargestCount = 100_000m;

    /// <summary>Fields of each object, where the field is a list of objects.</summary>
    internal ImmutableArray<CalcField> Of { get; init; } = [];

    /// <summary>A voltage: it is divided by, and no dwelling has one beyond the table.</summary>
    internal static CalcField Volts(string name, string words) => new(name, "number", words, 1m, 1000m);

    /// <summary>A whole number.</summary>
    internal static CalcField Count(string name, string words, decimal least = 0m) => new(name, "whole", words, least, LargestCount);
}
