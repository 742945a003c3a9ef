using Estimator.Engine.Explanations;

namespace Estimator.Engine.Alternates;

/// <summary>What one more of something costs when it is added to the job later.</summary>
/// <param name="What">What it is.</param>
/// <param name="Room">The room that it was tried in.</param>
/// <param name="Price">What the price rises by, before it is rounded up.</param>
/// <param name="Hours">What the hours rise by.</param>
/// <param name="Book">What both are explained from.</param>
public sealed record UnitPrice(string What, string Room, Fact Price, Fact Hours, ExplanationBook Book);
