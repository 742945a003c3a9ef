using Estimator.Engine.Explanations;
using Estimator.Engine.House;

namespace Estimator.Web.Explanations;

/// <summary>What the figures of a page are explained from; a page cascades it to the numbers on it.</summary>
/// <param name="Book">The pages of the explanation.</param>
/// <param name="Job">The job, whose names stand for its file's paths; null on a page of several jobs.</param>
public sealed record FigureSource(ExplanationBook Book, Job? Job);
