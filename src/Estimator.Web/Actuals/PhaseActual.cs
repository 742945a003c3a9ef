using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;

namespace Estimator.Web.Actuals;

/// <summary>A phase as estimated and as it went.</summary>
/// <param name="Phase">The phase.</param>
/// <param name="Estimated">Estimated hours.</param>
/// <param name="Worked">Hours that were written down.</param>
/// <param name="Over">Hours above the estimate, below zero where it took fewer; null where none were written down.</param>
public sealed record PhaseActual(WorkPhase Phase, Fact Estimated, Fact Worked, Fact? Over);
