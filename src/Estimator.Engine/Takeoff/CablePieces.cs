using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring;

namespace Estimator.Engine.Takeoff;

/// <summary>How long each run of cable is cut.</summary>
/// <remarks>
/// The slack of a run stays in the wall; the tolerance is for a site that differs from the plan and is cut off at the box. Both are practice, stated by the job or read from the
/// practice table (common practice, no source).
/// </remarks>
internal static class CablePieces
{
    private const string Category = "cable";

    internal static ImmutableArray<CablePiece> Of(Job job, WiringPlan wiring, PartsCatalogue catalogue, PageWriter page)
    {
        var tolerance = job.Practice.CutTolerancePercent is { } own
            ? page.Given("$.practice.cut_tolerance_percent", "Tolerance of each piece of cable", own.ToHundredths(), Unit.Percent)
            : PracticeDefaults.CutTolerancePercent.Read(page, Unit.Percent);
        var trim = Up(page, "cut-trim", "Trim of each cut", Stated(page, job.Practice.CutTrim, "cut_trim", "Trim of each cut", PracticeDefaults.CutTrim));
        return [.. wiring.Runs.Select(r => (r.Cable.ItemId, r.Id, r.Total)).Concat(wiring.Feeders.Select(f => (f.ItemId, f.Id, f.Total)))
            .Where(r => catalogue.Find(r.ItemId)?.Category == Category)
            .Select(r => new CablePiece(r.ItemId, r.Id, Piece(page, r.Total, tolerance), trim))];
    }

    /// <summary>From which length the end of a coil is worth keeping.</summary>
    internal static Fact UsefulEnd(Job job, PageWriter page) => Stated(page, job.Practice.UsefulEnd, "useful_end", "End of a coil that is worth keeping", PracticeDefaults.UsefulEnd);

    private static Fact Piece(PageWriter page, Fact run, Fact tolerance) => Up(page, "cut-piece", "Piece to cut", page.Compute(
        Operation.Sum, "cut-piece", "Run and its tolerance", Unit.Length, run, page.Compute(Operation.PercentOf, "cut-tolerance", "Tolerance", Unit.Length, run, tolerance)));

    private static Fact Up(PageWriter page, string rule, string label, Fact length) => page.Compute(
        Operation.RoundUp, rule, label, Unit.Length, length, page.Constant("A sixteenth of an inch", checked((int)Length.FromSixteenths(1).ToNanometres()), Unit.Length));

    private static Fact Stated(PageWriter page, Length? own, string field, string label, RuleRow row) =>
        own is { } length ? page.Given($"$.practice.{field}", label, length) : row.ReadInches(page);
}
