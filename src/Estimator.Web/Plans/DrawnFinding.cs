using Estimator.Engine.Findings;

namespace Estimator.Web.Plans;

/// <summary>A finding at its place on the sheet.</summary>
/// <param name="Number">Its number on drawings and lists.</param>
/// <param name="Finding">What was found.</param>
/// <param name="At">Middle of its triangle.</param>
public sealed record DrawnFinding(int Number, Finding Finding, SheetPoint At);
