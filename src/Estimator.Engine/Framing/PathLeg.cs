using System.Collections.Immutable;
using Estimator.Engine.Explanations;

namespace Estimator.Engine.Framing;

/// <summary>A horizontal part of a way.</summary>
/// <param name="Length">Its length, in sixteenths.</param>
/// <param name="Corners">The user's figures of the inner corners that it passes.</param>
internal sealed record PathLeg(int Length, ImmutableArray<(Fact X, Fact Y)> Corners);
