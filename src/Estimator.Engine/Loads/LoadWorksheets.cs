using System.Collections.Immutable;
using Estimator.Engine.Explanations;

namespace Estimator.Engine.Loads;

/// <summary>The load calculations of a job.</summary>
/// <param name="Sheets">One worksheet a method.</param>
/// <param name="Page">Page of the explanation book.</param>
public sealed record LoadWorksheets(ImmutableArray<LoadWorksheet> Sheets, ExplanationPage Page);
