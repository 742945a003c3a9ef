using Estimator.Engine.Explanations;

namespace Estimator.Engine.Changes;

/// <summary>A line of a change: what comes, or what goes, with its cost before overhead and profit.</summary>
/// <param name="Kind">Whether it comes or goes.</param>
/// <param name="ItemId">The item; a word such as <c>permit</c> for other cost.</param>
/// <param name="Description">What it is.</param>
/// <param name="Unit">each, foot or dollars.</param>
/// <param name="Quantity">How many, or how many feet; never negative.</param>
/// <param name="Hours">Hours that are added, or for what goes those that are given back less those of taking it out.</param>
/// <param name="Material">Cost of material with tax, to the cent; what is given back is negative.</param>
/// <param name="Labor">Cost of labor, to the cent; what is given back is negative, taking out is positive.</param>
/// <param name="Amount">Material and labor together.</param>
/// <param name="Priced">Whether the material has a price.</param>
public sealed record ChangeLine(ChangeKind Kind, string ItemId, string Description, string Unit, Fact Quantity, Fact Hours, Fact Material, Fact Labor, Fact Amount, bool Priced);
