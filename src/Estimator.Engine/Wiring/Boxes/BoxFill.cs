using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Wiring.Boxes;

/// <summary>The volume that the contents of a box ask for.</summary>
/// <remarks>
/// Each conductor that enters counts once at its own size; clamps, studs and hickeys at the largest conductor in the box; each yoke twice at the largest
/// conductor on it; grounding conductors together once, and from 2020 a quarter more for each beyond four. Fractions stay.
/// Source: NEC 314.16(B).
/// </remarks>
public static class BoxFill
{
    /// <summary>The required volume in cubic inches.</summary>
    public static Fact Required(PageWriter page, CodeEdition edition, BoxContents contents)
    {
        var year = (int)edition;
        List<Fact> parts = [];
        foreach (var (size, count) in contents.Conductors.Where(c => c.Count > 0))
        {
            parts.Add(Allowance(page, "box-conductors", "Conductors that enter", size, page.Constant("Conductors", count, Unit.Each)));
        }

        AddFittings(page, contents, parts);
        foreach (var (size, gangs) in contents.Yokes)
        {
            var gang = page.Constant("Gangs of the device", gangs, Unit.Each);
            var twice = page.Compute(Operation.Product, "box-yoke", "Allowances of the yoke", Unit.Each, BoxFillRules.Yoke.Read(page, Unit.Each), gang);
            parts.Add(Allowance(page, "box-yoke", "Device on a yoke", size, twice));
        }

        AddGrounds(page, year, contents, parts);
        foreach (var size in contents.TerminalBlocks.Where(_ => BoxFillRules.TerminalBlock.StandsIn(year)))
        {
            parts.Add(Allowance(page, "box-terminal-block", "Terminal block", size, BoxFillRules.TerminalBlock.Read(page, Unit.Each)));
        }

        return page.Sum("box-fill", "Volume that the contents ask for", Unit.CubicInches, parts);
    }

    private static void AddFittings(PageWriter page, BoxContents contents, List<Fact> parts)
    {
        if (Largest(contents) is not { } largest)
        {
            return;
        }

        if (contents.InternalClamps)
        {
            parts.Add(Allowance(page, "box-clamps", "Internal clamps", largest, BoxFillRules.InternalClamps.Read(page, Unit.Each)));
        }

        if (contents.LuminaireStuds > 0)
        {
            parts.Add(Allowance(page, "box-stud", "Luminaire stud", largest, BoxFillRules.LuminaireStud.Read(page, Unit.Each)));
        }

        if (contents.Hickeys > 0)
        {
            parts.Add(Allowance(page, "box-hickey", "Hickey", largest, BoxFillRules.Hickey.Read(page, Unit.Each)));
        }
    }

    private static void AddGrounds(PageWriter page, int year, BoxContents contents, List<Fact> parts)
    {
        var count = contents.Grounds.Sum(g => g.Count);
        if (count > 0)
        {
            var largest = contents.Grounds.Where(g => g.Count > 0).Max(g => g.Size);
            parts.Add(Allowance(page, "box-grounds", "Grounding conductors together", largest, BoxFillRules.Grounds.Read(page, Unit.Each)));
            var beyond = count - BoxFillRules.GroundsIncluded.Number();
            if (beyond > 0 && BoxFillRules.FurtherGround.StandsIn(year))
            {
                var more = page.Compute(
                    Operation.Difference, "box-grounds-beyond", "Grounding conductors beyond those", Unit.Each,
                    page.Constant("Grounding conductors", count, Unit.Each), BoxFillRules.GroundsIncluded.Read(page, Unit.Each));
                var quarters = page.Compute(Operation.Product, "box-grounds-beyond", "Allowances for them", Unit.Each, more, BoxFillRules.FurtherGround.Read(page, Unit.Each));
                parts.Add(Allowance(page, "box-grounds-beyond", "Further grounding conductors", largest, quarters));
            }
        }

        if (contents.IsolatedGrounds.Any(g => g.Count > 0) && BoxFillRules.IsolatedGrounds.StandsIn(year))
        {
            var largest = contents.IsolatedGrounds.Where(g => g.Count > 0).Max(g => g.Size);
            parts.Add(Allowance(page, "box-isolated-grounds", "Isolated grounding conductors", largest, BoxFillRules.IsolatedGrounds.Read(page, Unit.Each)));
        }
    }

    private static Fact Allowance(PageWriter page, string rule, string label, WireSize size, Fact times) => page.Compute(
        Operation.Product, rule, label, Unit.CubicInches, BoxAllowances.For(size).Read(page, Unit.CubicInches, BoxAllowances.CubicInches), times);

    private static WireSize? Largest(BoxContents contents)
    {
        var sizes = contents.Conductors.Concat(contents.Grounds).Concat(contents.IsolatedGrounds).Where(c => c.Count > 0).Select(c => c.Size).ToList();
        return sizes.Count > 0 ? sizes.Max() : null;
    }
}
