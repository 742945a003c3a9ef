using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Rules;
using Estimator.Engine.Takeoff;

namespace Estimator.Engine.Labor;

/// <summary>Multiplies hours by the factors that act on them, line by line.</summary>
internal sealed class LaborFactoring(Job job, PageWriter page)
{
    private readonly List<RuleRow> _taken = [];
    private string _phase = "";
    private ImmutableArray<RuleRow> _ofTheJob = [];

    /// <summary>The factors of a place.</summary>
    internal static IEnumerable<RuleRow> Of(WorkPlace place)
    {
        if (place.Fished)
        {
            yield return LaborFactors.Fished;
        }

        switch (place.Build)
        {
            case WallBuild.PlasterAndLath when place.Fished:
                yield return LaborFactors.Plaster;
                break;
            case WallBuild.MetalStuds:
                yield return LaborFactors.MetalStuds;
                break;
            case WallBuild.FurredMasonry:
                yield return LaborFactors.FurredMasonry;
                break;
            default:
                break;
        }

        if (place.Through is not TightSpace.None)
        {
            yield return place.Through switch { TightSpace.Attic => LaborFactors.TightAttic, TightSpace.Crawl => LaborFactors.Crawl, _ => LaborFactors.LowCrawl };
        }

        if (place.Repeated)
        {
            yield return LaborFactors.Repeated;
        }
    }

    /// <summary>Begins a line in a phase.</summary>
    internal void Begin(WorkPhase phase)
    {
        _taken.Clear();
        _phase = Words.Snake(phase);
        _ofTheJob = LaborFactors.Together(OfTheWholeJob(), _phase);
    }

    /// <summary>The factors that the line's hours, or a part of them, were multiplied by.</summary>
    internal ImmutableArray<RuleRow> Taken() => [.. _taken.Where(f => f.Number() != 1).Distinct()];

    /// <summary>Hours by the factors of their place, no more than the cap leaves room for.</summary>
    internal Fact By(Fact hours, IEnumerable<RuleRow> factors)
    {
        ImmutableArray<RuleRow> acting = LaborFactors.Together(factors, _phase);
        return Beyond(acting) ? Times(hours, Capped(), LaborFactors.Cap.Label) : acting.Aggregate(hours, By);
    }

    /// <summary>What the factors of a place add on top of plain hours that are counted already; null where none acts.</summary>
    internal Fact? More(Fact hours, IEnumerable<RuleRow> factors)
    {
        ImmutableArray<RuleRow> acting = LaborFactors.Together(factors, _phase);
        if (acting.IsEmpty)
        {
            return null;
        }

        _taken.AddRange(acting);
        var label = acting[0].Label;
        var times = Beyond(acting) ? Capped() : acting.Skip(1).Aggregate(acting[0].Read(page, Unit.Factor), (f, row) =>
            page.Compute(Operation.Product, "labor-factor", row.Label, Unit.Factor, f, row.Read(page, Unit.Factor)));
        return Times(hours, page.Compute(Operation.Difference, "labor-factor", label, Unit.Factor, times, page.Constant("Plain hours, counted already", 1)), label);
    }

    /// <summary>The line's hours by the factors of the whole job.</summary>
    internal Fact OfTheJob(Fact hours) => _ofTheJob.Aggregate(hours, By);

    private IEnumerable<RuleRow> OfTheWholeJob()
    {
        if (job.Practice.Occupied)
        {
            yield return LaborFactors.Occupied;
        }

        if (job.Practice.SmallJob)
        {
            yield return LaborFactors.SmallJob;
        }

        if (job.Practice.CarriedUp)
        {
            yield return LaborFactors.CarriedUp;
        }

        if (job.Bid.Crew is { OvertimeHoursAWeek: > 0 } crew)
        {
            yield return LaborFactors.Overtime(crew.OvertimeWeeks ?? 1);
        }
    }

    private bool Beyond(ImmutableArray<RuleRow> acting) => acting.Concat(_ofTheJob).Aggregate(1m, (product, f) => product * f.Number()) > LaborFactors.Cap.Number();

    // What the factors of the job leave of the cap.
    private Fact Capped()
    {
        _taken.Add(LaborFactors.Cap);
        var cap = LaborFactors.Cap.Read(page, Unit.Factor);
        return _ofTheJob.Aggregate(cap, (left, row) => page.Compute(Operation.Quotient, "labor-cap", "What the cap leaves", Unit.Factor, left, row.Read(page, Unit.Factor)));
    }

    private Fact By(Fact hours, RuleRow factor)
    {
        _taken.Add(factor);
        return Times(hours, factor.Read(page, Unit.Factor), factor.Label);
    }

    private Fact Times(Fact hours, Fact factor, string label) => page.Compute(Operation.Product, "labor-factor", label, Unit.Hours, hours, factor);
}
