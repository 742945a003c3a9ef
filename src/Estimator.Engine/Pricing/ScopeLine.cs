using Estimator.Engine.House;

namespace Estimator.Engine.Pricing;

/// <summary>A sentence of the scope.</summary>
/// <param name="Id">Stable id, such as <c>in/openings</c>.</param>
/// <param name="Part">What it says.</param>
/// <param name="Text">The sentence.</param>
/// <param name="Composed">What the program composed; null for a sentence that the user added.</param>
public sealed record ScopeLine(string Id, ScopePart Part, string Text, string? Composed);
