using System.Collections.Immutable;
using Estimator.Engine.Explanations;

namespace Estimator.Engine.Loads;

/// <summary>A load calculation, line by line.</summary>
/// <param name="Method">standard, optional, existing or measured.</param>
/// <param name="Article">Where the method stands.</param>
/// <param name="Lines">The lines.</param>
/// <param name="TotalVa">The load.</param>
/// <param name="ExactAmperes">The load in amperes, unrounded.</param>
/// <param name="Amperes">In whole amperes: under a half is dropped.</param>
/// <param name="HeatUsed">Whether heat, and not cooling, is counted; null where neither is.</param>
public sealed record LoadWorksheet(
    string Method, string Article, ImmutableArray<LoadLine> Lines, Fact TotalVa, Fact ExactAmperes, Fact Amperes, bool? HeatUsed)
{
    /// <summary>How the rules were read where they leave a choice, sentence by sentence.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>Whether every rule of the sheet was seen in its edition.</summary>
    public bool Verified => Lines.All(l => l.Verified);

    /// <summary>The line with an id.</summary>
    /// <exception cref="InvalidOperationException">There is no such line.</exception>
    public Fact this[string id] => Lines.First(l => l.Id == id).Value;
}
