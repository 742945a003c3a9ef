using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Rules;
using Estimator.Engine.Takeoff;

namespace Estimator.Engine.Labor;

/// <summary>Finds the hours of a takeoff.</summary>
/// <remarks>
/// Each factor acts in the phases and on the work that it belongs to; of alternatives the largest counts alone, and together they come to no more than the cap.
/// Cable hours take in the bores of an average run; where bores are counted apart, pulling alone is taken. Setting up and clearing are hours only where driving is, since
/// the productive share takes both in. Source: labor.csv and the factor table.
/// </remarks>
public sealed class LaborHours
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = 6;

    private const string Bore = "bored-hole";
    private const string SetUp = "mobilization";

    private readonly Job _job;
    private readonly TakeoffResult _takeoff;
    private readonly PartsCatalogue _catalogue;
    private readonly PageWriter _page = new(PageNumber);
    private readonly LaborFactoring _factors;

    private LaborHours(Job job, TakeoffResult takeoff, PartsCatalogue catalogue)
    {
        (_job, _takeoff, _catalogue) = (job, takeoff, catalogue);
        _factors = new LaborFactoring(job, _page);
    }

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
            Findings = [.. Repeated()],
            Page = _page.ToPage(),
        };
    }

    private Fact? WaitDays() => _job.Service is not { } service ? null
        : service.UtilityWaitDays is { } own ? _page.Given("$.service.utility_wait_days", "Days of waiting for the utility", own, Unit.Each)
        : ServicePartRules.UtilityWaitDays.Read(_page, Unit.Each);

    private IEnumerable<LaborLine> Lines(TakeoffLine line)
    {
        if (line.ItemId == Bore)
        {
            // Never beside cable hours that take the bores in.
            return _job.Practice.BoresApart ? [Line(line, WorkPhase.RoughIn, Bores, LaborFactors.BoreHours.Basis)] : [];
        }

        if (line.ItemId == SetUp && _job.Bid.Travel is not TravelBy.Hours)
        {
            // Never beside the productive share, which takes them in.
            return [];
        }

        var devices = _takeoff.Devices.Where(d => d.ItemId == line.ItemId && d.OwnerSupplied == line.OwnerSupplied).ToList();
        return _catalogue.LaborFor(line.ItemId).Select(unit => Line(line, unit.Phase, () => devices.Count > 0 ? OfDevices(devices, unit) : OfQuantity(line, unit), unit.Basis));

        Fact Bores() => _page.Compute(Operation.Product, "labor-bores", "Bores counted apart", Unit.Hours, line.Quantity, LaborFactors.BoreHours.Read(_page, Unit.Hours));
    }

    private LaborLine Line(TakeoffLine line, WorkPhase phase, Func<Fact> find, string basis)
    {
        _factors.Begin(phase);
        var hours = Rounded(_factors.OfTheJob(find()));
        return new LaborLine(line.ItemId, line.Description, phase, line.Quantity, hours, basis, _factors.Taken());
    }

    private Fact OfQuantity(TakeoffLine line, LaborUnit unit)
    {
        if (line.Category != "cable")
        {
            return _factors.By(Times(line.Quantity, unit), []);
        }

        var hours = _factors.By(Pulled(Times(line.Quantity, unit)), []);
        foreach (var slow in _takeoff.SlowCable.Where(c => c.ItemId == line.ItemId))
        {
            var (rule, label) = slow.Place.Fished ? ("labor-fished", "With the part that is fished") : ("labor-slow", "With the part that is slow");
            hours = _factors.More(Pulled(Times(slow.Feet, unit)), LaborFactoring.Of(slow.Place)) is { } more
                ? _page.Compute(Operation.Sum, rule, label, Unit.Hours, hours, more) : hours;
        }

        return hours;
    }

    private Fact Pulled(Fact hours) => _job.Practice.BoresApart
        ? _page.Compute(Operation.PercentOf, "labor-pulling", "Pulling alone", Unit.Hours, hours, LaborFactors.PullingPercent.Read(_page, Unit.Percent))
        : hours;

    private Fact OfDevices(List<CountedDevice> devices, LaborUnit unit)
    {
        List<Fact> parts = [];
        foreach (var alike in devices.GroupBy(d => d).OrderBy(g => (g.Key.Further, g.Key.Place.Order, g.Key.CeilingFeet)))
        {
            var count = _page.Constant(alike.Key.Further ? "Further devices in their boxes" : "Devices, first in their box", alike.Count(), Unit.Each);
            var hours = alike.Key.Further ? OfFurther(count, unit) : Times(count, unit);
            var factors = LaborFactoring.Of(alike.Key.Place);
            parts.Add(_factors.By(hours, alike.Key.CeilingFeet > 0 ? factors.Append(LaborFactors.AtHeight(Math.Max(alike.Key.CeilingFeet, 1))) : factors));
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

    private Fact Rounded(Fact hours) => _page.Compute(
        Operation.RoundNearest, "hours-to-the-hundredth", "To the hundredth of an hour", Unit.Hours, hours,
        _page.Compute(Operation.Quotient, "hundredth", "A hundredth", Unit.Hours, _page.Constant("One", 1, Unit.Hours), _page.Constant("Hundredths", 100)));

    // A device more in one of them ends the repetition, and its room is priced in full: who sees the price move must find that said.
    private IEnumerable<Finding> Repeated()
    {
        var rooms = RepeatedRooms.Of(_job);
        if (rooms.Count > 0)
        {
            yield return new Finding
            {
                Code = "repeated-rooms",
                Severity = Severity.Note,
                Where = [.. rooms.Order(StringComparer.Ordinal)],
                Text = FormattableString.Invariant($"Devices of {rooms.Count} rooms are taken at {LaborFactors.Repeated.Number()} of their rough-in and trim-out hours, because each repeats another room. A device more or less in one of them ends that, and the room is priced in full."),
            };
        }
    }
}
