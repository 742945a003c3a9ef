using Estimator.Data.Contracts;
using Estimator.Data.Databases;
using Estimator.Data.Jobs;
using Estimator.Engine;
using Estimator.Engine.Contracts;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Data.Revisions;

/// <summary>Between estimates and the rows of a saved revision.</summary>
internal static class RevisionRows
{
    internal static RevisionRow New(string jobId, long company, int number, NewRevision revision, string catalogueHash, DateTimeOffset now)
    {
        var (estimate, bid) = (revision.Estimate, revision.Estimate.Bid);
        return new RevisionRow
        {
            CompanyId = company,
            JobId = jobId,
            Number = number,
            JobVersion = revision.JobVersion,
            EngineHash = EngineHash.Value,
            CatalogueHash = catalogueHash,
            JobJson = JobFile.Write(estimate.House.Job),
            Note = StorableText.Of(revision.Note),
            Who = StorableText.Of(revision.Who),
            AtUtcTicks = now.UtcTicks,
            DirectCostE4 = Scaled.ToE4(bid.DirectTotal.Value),
            LowE4 = Scaled.ToE4(bid.Low.Value),
            LikelyE4 = Scaled.ToE4(bid.Price.Value),
            HighE4 = Scaled.ToE4(bid.High.Value),
            HoursE4 = Scaled.ToE4(estimate.Labor.Total.Value),
            OpeningsE4 = Scaled.ToE4(estimate.Takeoff.Openings.Value),
            Events = [],
            TakeoffLines = Numbered(company, Takeoff(estimate)),
            Cables = Numbered(company, Cables(estimate)),
            Boxes = Numbered(company, Boxes(estimate)),
            Breakers = Numbered(company, Breakers(estimate)),
            Connectors = Numbered(company, Connectors(estimate)),
            Labor = Numbered(company, Labor(estimate)),
        };
    }

    internal static RevisionSummary Summary(RevisionRow r) => new(
        r.JobId, r.Number, r.JobVersion, r.EngineHash, new BidLife(r.Sent?.ValidDays ?? 0, [.. r.Events!.OrderBy(e => e.Sequence).Select(ContractRows.Event)]), r.Note, r.Who, JobRows.Utc(r.AtUtcTicks),
        Scaled.MoneyFromE4(r.DirectCostE4), Scaled.MoneyFromE4(r.LowE4), Scaled.MoneyFromE4(r.LikelyE4), Scaled.MoneyFromE4(r.HighE4),
        LaborTime.FromHours(Scaled.FromE4(r.HoursE4)));

    private static IEnumerable<TakeoffLineRow> Takeoff(JobEstimate estimate) => estimate.Takeoff.Lines.Select(l => new TakeoffLineRow
    {
        Item = l.ItemId,
        Category = l.Category,
        Description = StorableText.Of(l.Description),
        Unit = l.Unit,
        QuantityE4 = Scaled.ToE4(l.Quantity.Value),
        OwnerSupplied = l.OwnerSupplied,
    });

    private static IEnumerable<CableRow> Cables(JobEstimate estimate) => estimate.Wiring.Runs.GroupBy(r => (r.Cable, r.Fished)).Select(g => new CableRow
    {
        Item = g.Key.Cable.ItemId,
        Method = Word.Of(g.Key.Cable.Method),
        Size = g.Key.Cable.Size.ToString(),
        Conductors = g.Key.Cable.Conductors,
        Fished = g.Key.Fished,
        Runs = g.Count(),
        LengthNm = g.Sum(r => r.Total.AsLength().Value.ToNanometres()),
    }).Concat(estimate.Wiring.Feeders.GroupBy(f => (f.ItemId, f.Wire, f.Fished)).Select(g => new CableRow
    {
        Item = g.Key.ItemId,
        Method = "feeder",
        Size = g.Key.Wire.ToString(),
        Conductors = (int)FeederRules.Conductors.Number(),
        Fished = g.Key.Fished,
        Runs = g.Count(),
        LengthNm = g.Sum(f => f.Total.AsLength().Value.ToNanometres()),
    })).OrderBy(r => r.Item, StringComparer.Ordinal).ThenBy(r => r.Fished);

    private static IEnumerable<BoxRow> Boxes(JobEstimate estimate) => estimate.Wiring.Boxes.GroupBy(b => (b.Item?.ItemId, b.Use, b.Gangs, b.OldWork)).Select(g => new BoxRow
    {
        Item = g.Key.ItemId,
        Use = Word.Of(g.Key.Use),
        Gangs = g.Key.Gangs,
        OldWork = g.Key.OldWork,
        Boxes = g.Count(),
    }).OrderBy(r => r.Item, StringComparer.Ordinal).ThenBy(r => r.Use, StringComparer.Ordinal).ThenBy(r => r.Gangs).ThenBy(r => r.OldWork);

    private static IEnumerable<BreakerRow> Breakers(JobEstimate estimate) => estimate.Wiring.Circuits.Where(c => c.BreakerPoles > 0).GroupBy(c => (c.Panel, c.BreakerA.Value, c.BreakerPoles, c.Protection))
        .OrderBy(g => g.Key)
        .Select(g => new BreakerRow
        {
            Panel = StorableText.Of(estimate.Layout.Panels[g.Key.Panel].Source.Id),
            RatingA = decimal.ToInt32(g.Key.Value),
            Poles = g.Key.BreakerPoles,
            Protection = Word.Of(g.Key.Protection),
            Breakers = g.Count(),
        });

    private static IEnumerable<ConnectorRow> Connectors(JobEstimate estimate) => estimate.Takeoff.Lines.Where(l => l.Category == "connector").Select(l => new ConnectorRow
    {
        Item = l.ItemId,
        Description = StorableText.Of(l.Description),
        Connectors = l.Quantity.AsCount().Value,
    });

    private static IEnumerable<LaborRow> Labor(JobEstimate estimate) => estimate.Labor.Lines.OrderBy(l => l.Phase).Select(l => new LaborRow
    {
        Phase = Word.Of(l.Phase),
        Item = l.ItemId,
        QuantityE4 = Scaled.ToE4(l.Quantity.Value),
        HoursE4 = Scaled.ToE4(l.Hours.Value),
    });

    private static List<TRow> Numbered<TRow>(long company, IEnumerable<TRow> rows)
        where TRow : RevisionLineRow
    {
        var lines = rows.ToList();
        foreach (var (row, i) in lines.Select((r, i) => (r, i)))
        {
            (row.CompanyId, row.Line) = (company, i + 1);
        }

        return lines;
    }
}
