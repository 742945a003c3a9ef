using Estimator.Engine.Explanations;
using Estimator.Engine.Framing;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Takeoff;

/// <summary>Fasteners of cable.</summary>
/// <remarks>One near the box at each end and one for each further spacing along framing; none between bored members. Source: NEC 334.30, 314.17(B)(2).</remarks>
public static class Support
{
    /// <summary>Fasteners of a run of nonmetallic cable.</summary>
    public static Fact Fasteners(PageWriter page, RunPath path) => Fasteners(page, path, TakeoffRules.StapleSpacing.ReadInches(page), TakeoffRules.StapleEnds);

    /// <summary>Straps of a run of armored cable.</summary>
    /// <remarks>Source: NEC 330.30.</remarks>
    public static Fact OfArmored(PageWriter page, RunPath path) => Fasteners(page, path, RacewayRules.ArmoredSupport.ReadFeet(page), RacewayRules.EndSupports);

    /// <summary>Fasteners of a straight run along framing, given the first fastener's distance from the box at each end.</summary>
    /// <remarks>Both ends and as many between as keep the stretch between them within the spacing.</remarks>
    public static Fact Fasteners(PageWriter page, Fact length, Fact firstEnd, Fact lastEnd)
    {
        var between = page.Compute(Operation.Difference, "staples", "Between the end fasteners", Unit.Length, length, firstEnd, lastEnd);
        var spaces = page.Compute(Operation.Quotient, "staples", "Spacings", Unit.Each, between, TakeoffRules.StapleSpacing.ReadInches(page));
        var whole = page.Compute(Operation.RoundUp, "staples", "Whole spacings", Unit.Each, spaces, page.Constant("One", 1, Unit.Each));
        return page.Compute(Operation.Sum, "staples", "Fasteners", Unit.Each, whole, page.Constant("The last end's own", 1, Unit.Each));
    }

    private static Fact Fasteners(PageWriter page, RunPath path, Fact spacing, RuleRow ends)
    {
        var stapled = page.Compute(Operation.Sum, "stapled-length", "Length along framing", Unit.Length, path.Vertical, path.AlongMembers);
        var spaces = page.Compute(Operation.Quotient, "staples", "Spacings along framing", Unit.Each, stapled, spacing);
        var between = page.Compute(Operation.RoundDown, "staples", "Fasteners between the ends", Unit.Each, spaces, page.Constant("One", 1, Unit.Each));
        return page.Compute(Operation.Sum, "staples", "Fasteners of the run", Unit.Each, ends.Read(page, Unit.Each), between);
    }
}
