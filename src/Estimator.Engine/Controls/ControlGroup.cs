using System.Collections.Immutable;

namespace Estimator.Engine.Controls;

/// <summary>Switches that turn the same loads on and off.</summary>
/// <param name="Id">Stable id.</param>
/// <param name="Switches">Device indexes of the switches.</param>
/// <param name="Loads">The loads.</param>
/// <param name="Proposed">Whether the program proposed it.</param>
public sealed record ControlGroup(string Id, ImmutableArray<int> Switches, ImmutableArray<ControlledLoad> Loads, bool Proposed);
