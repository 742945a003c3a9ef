using Estimator.Engine.Explanations;

namespace Estimator.Engine.Framing;

/// <summary>The shortest ditch between two buildings: where it leaves one and where it enters the other.</summary>
/// <param name="From">The spot on the wall that it leaves, as deep as it is.</param>
/// <param name="To">The spot on the wall that it enters.</param>
/// <param name="Length">In sixteenths.</param>
/// <param name="Building">Index of the building in the job, whose trench it is.</param>
internal sealed record Trench(Placement From, Placement To, int Length, int Building)
{
    internal Trench Turned => this with { From = To, To = From };

    /// <summary>The trench with a depth that is explained on a page.</summary>
    internal Trench Explained(Fact depth) => this with { From = From with { HeightFact = depth }, To = To with { HeightFact = depth } };
}
