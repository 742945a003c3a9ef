using System.Collections.Immutable;

namespace Estimator.Engine.Rules;

/// <summary>A rule table as its file states it.</summary>
/// <param name="Id">Stable id, equal to the file's name.</param>
/// <param name="Title">What it is.</param>
/// <param name="Unit">Unit of its figures, or what each column's unit is.</param>
/// <param name="Basis"><c>published</c>, <c>from memory</c>, <c>common practice, no source</c> or <c>invented</c>.</param>
/// <param name="Source">Where it was read.</param>
/// <param name="Effective">From when, or which editions.</param>
/// <param name="Rows">The rows.</param>
public sealed record RuleTableFile(
    string Id, string Title, string Unit, string Basis, RuleSource Source, string Effective, ImmutableArray<RuleRowFile> Rows);
