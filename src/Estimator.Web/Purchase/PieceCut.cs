using Estimator.Documents.Purchase;
using Estimator.Engine.Explanations;

namespace Estimator.Web.Purchase;

/// <summary>A piece as it is cut from its coil.</summary>
/// <param name="Length">Its length.</param>
/// <param name="Mark">Where to cut: from the free end of the whole coil, trims counted.</param>
/// <param name="Run">What it is for.</param>
public sealed record PieceCut(Fact Length, Fact Mark, CutRun Run);
