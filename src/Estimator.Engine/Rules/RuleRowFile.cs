using System.Collections.Immutable;
using System.Text.Json;

namespace Estimator.Engine.Rules;

/// <summary>A row of a rule table as its file states it.</summary>
/// <param name="Key">Stable key, unique in the table.</param>
/// <param name="Label">What it is, in trade words.</param>
/// <param name="Cells">Column to value: a number, a word, true or false, or null for a blank cell.</param>
/// <param name="Unit">Unit where it differs from the table's.</param>
/// <param name="Basis">Basis where it differs from the table's.</param>
/// <param name="Source">Source where it differs from the table's.</param>
public sealed record RuleRowFile(
    string Key,
    ImmutableSortedDictionary<string, JsonElement> Cells,
    string Label = "",
    string? Unit = null,
    string? Basis = null,
    RuleSource? Source = null);
