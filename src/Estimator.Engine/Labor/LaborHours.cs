using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Rules;
using Estimator.Engine.Takeoff;

namespace Estimator.Engine.Labor;

/// <summary>Finds the hours of a takeoff.</summary>
/// <remarks>
/// Fishing acts on rough-in alone; height on rough-in and trim-out of ceiling work; an occupied house on everything. Alternatives are never
/// multiplied together. Cable hours take in the bores of an average run, so holes are not counted again. Source: labor.csv and the factor table.
/// </remarks>
public sealed class LaborHours
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = 6;

    private readonly Job _job;
    private readonly TakeoffResult _takeoff;
    private readonly PartsCatalogue _catalogue;
    private readonly PageWriter _page = new(PageNumber);

    private LaborHours(Job job, TakeoffResult takeoff, PartsCatalogue catalogue) => (_job, _takeoff, _catalogue) = (job, takeoff, catalogue);

    /// <summary>The hours.</summary>
    public static LaborPlan Compute(Job job, TakeoffResult takeoff, PartsCatalogue catalogue) => new LaborHours(job, takeoff, catalogue).Compute();

    private LaborPlan Compute()
    {
        ImmutableArray<LaborLine> lines = [.. _takeoff.Lines.SelectMany(Lines)];
        var byPhase = lines.GroupBy(l => l.Phase).ToImmutableSortedDictionary(
            g => g.Key, g => _page.Sum("phase-hours", $"Hours of {Words.Snake(g.Key).Replace('_', ' ')}", Unit.Hours, [.. g.Select(l => l.Hours)]));
        return new LaborPlan
        {
            Lines = lines,
            ByPhase = byPhase,
            Total = _page.Sum("all-hours", "Hours of the job", Unit.Hours, [.. byPhase.Values]),
            WaitDays = WaitDays(),
            Page = _page.ToPage(),
        };
    }

    private Fact? WaitDays() => _job.Service is not { } service ? null
        : service.UtilityWaitDays is { } own ? _page.Given("$.service.utility_wait_days", "Days of waiting for the utility", own, Unit.Each)
        : ServicePartRules.UtilityWaitDays.Read(_page, Unit.Each);

    private IEnumerable<LaborLine> Lines(TakeoffLine line)
    {
        var devices = _takeoff.Devices.Where(d => d.ItemId == line.ItemId && d.OwnerSupplied == line.OwnerSupplied).ToList();
        foreach (var unit in _catalogue.LaborFor(line.ItemId))
        {
            var hours = devices.Count > 0 ? OfDevices(devices, unit) : OfQuantity(line, unit);
            yield return new LaborLine(line.ItemId, line.Description, unit.Phase, line.Quantity, Rounded(Occupied(hours)), unit.Basis);
        }
    }

    private Fact OfQuantity(TakeoffLine line, LaborUnit unit)
    {
        var hours = Times(line.Quantity, unit);
        return line.Category == "cable" && _takeoff.FishedFeet.TryGetValue(line.ItemId, out var fished)
            ? _page.Compute(Operation.Sum, "labor-fished", "With the part that is fished", Unit.Hours, hours, More(Times(fished, unit), LaborFactors.Fished))
            : hours;
    }

    private Fact OfDevices(List<CountedDevice> devices, LaborUnit unit)
    {
        List<Fact> parts = [];
        foreach (var alike in devices.GroupBy(d => d).OrderBy(g => (g.Key.Further, g.Key.OldWork, g.Key.CeilingFeet)))
        {
            var count = _page.Constant(alike.Key.Further ? "Further devices in their boxes" : "Devices, first in their box", alike.Count(), Unit.Each);
            var hours = alike.Key.Further ? OfFurther(count, unit) : Times(count, unit);
            hours = alike.Key.OldWork && unit.Phase is WorkPhase.RoughIn ? By(hours, LaborFactors.Fished) : hours;
            parts.Add(alike.Key.CeilingFeet > 0 && unit.Phase is WorkPhase.RoughIn or WorkPhase.TrimOut ? By(hours, LaborFactors.AtHeight(Math.Max(alike.Key.CeilingFeet, 1))) : hours);
        }

        return _page.Sum("labor-devices", "Hours of the devices", Unit.Hours, parts);
    }

    private Fact OfFurther(Fact count, LaborUnit unit) => unit.Phase switch
    {
        WorkPhase.RoughIn => _page.Compute(Operation.Product, "labor-further", "Make-up of further devices", Unit.Hours, count, LaborFactors.FurtherRough.Read(_page, Unit.Hours)),
        WorkPhase.TrimOut => _page.Compute(
            Operation.PercentOf, "labor-further", "Trim-out of further devices", Unit.Hours, Times(count, unit), LaborFactors.FurtherTrimPercent.Read(_page, Unit.Percent)),
        _ => Times(count, unit),
    };

    private Fact Times(Fact quantity, LaborUnit unit)
    {
        var hours = _page.Row("labor.csv", $"{unit.Item}.{Words.Snake(unit.Phase)}", FormattableString.Invariant($"Hours for {unit.Per:0.##}: {unit.Basis}"), unit.Hours, Unit.Hours);
        if (unit.Per == 1)
        {
            return _page.Compute(Operation.Product, "labor-hours", "Quantity times unit", Unit.Hours, quantity, hours);
        }

        var per = _page.Row("labor.csv", $"{unit.Item}.{Words.Snake(unit.Phase)}.per", "Units that the hours are for", unit.Per, Unit.Each);
        var units = _page.Compute(Operation.Quotient, "labor-units", "Units of the labor table", Unit.Each, quantity, per);
        return _page.Compute(Operation.Product, "labor-hours", "Quantity times unit", Unit.Hours, units, hours);
    }

    private Fact Occupied(Fact hours) => _job.Practice.Occupied ? By(hours, LaborFactors.Occupied) : hours;

    private Fact By(Fact hours, RuleRow factor) =>
        _page.Compute(Operation.Product, "labor-factor", factor.Label, Unit.Hours, hours, factor.Read(_page, Unit.Factor));

    // What a factor adds on top of the plain hours that are counted already.
    private Fact More(Fact hours, RuleRow factor)
    {
        var extra = _page.Compute(Operation.Difference, "labor-factor", factor.Label, Unit.Factor, factor.Read(_page, Unit.Factor), _page.Constant("Plain hours, counted already", 1));
        return _page.Compute(Operation.Product, "labor-factor", factor.Label, Unit.Hours, hours, extra);
    }

    private Fact Rounded(Fact hours) => _page.Compute(
        Operation.RoundNearest, "hours-to-the-hundredth", "To the hundredth of an hour", Unit.Hours, hours,
        _page.Compute(Operation.Quotient, "hundredth", "A hundredth", Unit.Hours, _page.Constant("One", 1, Unit.Hours), _page.Constant("Hundredths", 100)));
}
