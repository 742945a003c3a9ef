using Estimator.Engine.Explanations;

namespace Estimator.Web.Contracts;

/// <summary>How much more or less of an item a revision takes than another.</summary>
/// <param name="Item">The item.</param>
/// <param name="Description">What it is.</param>
/// <param name="Unit">each or foot.</param>
/// <param name="Before">How many, or how many feet, in the one.</param>
/// <param name="After">In the other.</param>
public sealed record TakeoffChange(string Item, string Description, string Unit, decimal Before, decimal After)
{
    /// <summary>What explains it in the one; null where it is of no line, or of several.</summary>
    public Fact? ToldBefore { get; init; }

    /// <summary>What explains it in the other.</summary>
    public Fact? ToldAfter { get; init; }

    /// <summary>The difference.</summary>
    public decimal By => After - Before;
}
