using System.Collections.Immutable;
using Estimator.Data.Actuals;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.Learning;
using Estimator.Engine.Takeoff;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;

namespace Estimator.Web.Actuals;

/// <summary>What was written down of a job beside its estimate.</summary>
public sealed record ActualFigures
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = FigurePages.Actuals;

    private static readonly ImmutableArray<string> Kinds = ["cable", "box", "device", "plate"];

    /// <summary>The phases, in the order of the work.</summary>
    public required ImmutableArray<PhaseActual> Phases { get; init; }

    /// <summary>All of them together.</summary>
    public required PhaseActual All { get; init; }

    /// <summary>All that is bought, in takeoff order.</summary>
    public required ImmutableArray<MaterialActual> Material { get; init; }

    /// <summary>What the job left; null before hours were written down.</summary>
    public required JobResult? Result { get; init; }

    /// <summary>What explains them.</summary>
    public required FigureSource Source { get; init; }

    /// <summary>The figures of a job.</summary>
    public static ActualFigures Of(PricedJob priced, JobActuals actuals)
    {
        var (page, labor) = (new PageWriter(PageNumber), priced.Estimate.Labor);
        ImmutableArray<PhaseActual> phases =
        [
            .. labor.ByPhase.Keys.Union(actuals.Hours.Select(h => h.Phase)).Order().Select(p => Phase(
                page, p, labor.ByPhase.TryGetValue(p, out var hours) ? hours : page.Constant("Not estimated", 0, Unit.Hours), actuals.Hours.Where(h => h.Phase == p))),
        ];
        var worked = page.Sum("hours-worked", "Hours worked", Unit.Hours, [.. phases.Select(p => p.Worked)]);
        var used = actuals.Material.ToDictionary(m => m.Item, m => m.Quantity, StringComparer.Ordinal);
        var lines = priced.Estimate.Takeoff.Lines.DistinctBy(l => l.ItemId).ToImmutableArray();
        return new ActualFigures
        {
            Phases = phases,
            All = new PhaseActual(WorkPhase.Layout, labor.Total, worked, Over(page, worked, labor.Total)),
            Material = [.. lines.Where(l => OwnUnits.Acts(l.Category) || used.ContainsKey(l.ItemId)).Select(l => Item(page, l, used) with { Often = Kinds.Contains(l.Category) || used.ContainsKey(l.ItemId) })],
            Result = worked.Value > 0 ? JobResult.Of(page, priced.Estimate, worked, lines.Where(l => used.ContainsKey(l.ItemId)).ToDictionary(l => l.ItemId, l => Used(page, l, used[l.ItemId]), StringComparer.Ordinal)) : null,
            Source = priced.Source.With(page.ToPage()),
        };
    }

    private static PhaseActual Phase(PageWriter page, WorkPhase phase, Fact estimated, IEnumerable<ActualHours> entries)
    {
        var worked = page.Sum("hours-worked", "Hours worked", Unit.Hours, [.. entries.Select(e => page.Row(Citation.Actuals, American.Day(e.Day), e.Note.Length > 0 ? e.Note : "Hours", e.Hours, Unit.Hours))]);
        return new PhaseActual(phase, estimated, worked, worked.Value > 0 ? Over(page, worked, estimated) : null);
    }

    private static Fact Over(PageWriter page, Fact worked, Fact estimated) => page.Compute(Operation.Difference, "hours-over", "Hours above the estimate", Unit.Hours, worked, estimated);

    private static Fact Used(PageWriter page, TakeoffLine line, decimal quantity) => page.Row(Citation.Actuals, line.Description, "Used", quantity, line.Quantity.Unit);

    private static MaterialActual Item(PageWriter page, TakeoffLine line, Dictionary<string, decimal> used)
    {
        if (!used.TryGetValue(line.ItemId, out var quantity) || line.Quantity.Value == 0)
        {
            return new MaterialActual(line, null, null);
        }

        var more = page.Compute(Operation.Difference, "material-over", "Above the takeoff", line.Quantity.Unit, Used(page, line, quantity), line.Quantity);
        var share = page.Compute(Operation.Quotient, "material-over", "Above the takeoff, as a share of it", Unit.Factor, more, line.Quantity);
        return new MaterialActual(line, quantity, page.Compute(Operation.Product, "material-over", "Above the takeoff", Unit.Percent, share, page.Constant("Hundredths", 100)));
    }
}
