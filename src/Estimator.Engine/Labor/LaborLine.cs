using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Labor;

/// <summary>Hours for an item in a phase.</summary>
/// <param name="ItemId">The item.</param>
/// <param name="Description">What it is.</param>
/// <param name="Phase">The phase.</param>
/// <param name="Quantity">How many, or how many feet.</param>
/// <param name="Hours">The hours, factors applied.</param>
/// <param name="Basis">On what the unit rests.</param>
/// <param name="Factors">The factors that its hours, or a part of them, were multiplied by.</param>
public sealed record LaborLine(string ItemId, string Description, WorkPhase Phase, Fact Quantity, Fact Hours, string Basis, ImmutableArray<RuleRow> Factors);
