using System.Collections.Immutable;

namespace Estimator.Engine.Panels;

/// <summary>One-pole loads divided between the two legs.</summary>
/// <param name="OnA">Whether each load, in the order given, stands on leg A.</param>
/// <param name="ImbalanceVa">How far the legs are apart.</param>
/// <param name="LowerBoundVa">No division brings them nearer.</param>
public sealed record LegSplit(ImmutableArray<bool> OnA, long ImbalanceVa, long LowerBoundVa);
