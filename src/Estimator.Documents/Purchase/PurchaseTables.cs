using Estimator.Documents.Tables;
using Estimator.Engine;
using Estimator.Engine.Purchase;

namespace Estimator.Documents.Purchase;

/// <summary>The purchase list and the cut plan as CSV, of one job or several.</summary>
public static class PurchaseTables
{
    /// <summary>The purchase list, one row a pack size; what nobody offers has no price and says so.</summary>
    public static string Purchase(PurchasePlan plan) => Csv.Write(
        ["item", "description", "needed", "unit", "supplier", "pack_size", "packs", "pack_price_usd", "cost_usd", "from_shelf", "left_of_item", "goes_back", "note"], plan.Lines.SelectMany(Rows));

    /// <summary>The cut plan, one row a piece, in the order of cutting.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="jobs">The jobs that it was made for, which name the runs.</param>
    public static string CutPlan(PurchasePlan plan, IReadOnlyList<JobEstimate> jobs)
    {
        var runs = CutRun.Of(jobs);
        return Csv.Write(
            ["item", "coil", "coil_ft", "supplier", "from_shelf", "cut", "length", "length_ft", "cut_at", "cut_at_ft", "left_on_coil_ft", "run", "circuit", "from", "to", "role"],
            plan.Cuts.SelectMany(cut => cut.Coils.SelectMany((coil, c) => Rows(cut, coil, c + 1, runs))));
    }

    /// <summary>What is left over: of packs by item, of cable by coil.</summary>
    public static string LeftOver(PurchasePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Csv.Write(
            ["item", "description", "coil", "had", "needed", "left", "unit", "what_to_do"],
            plan.Lines.Where(l => l.Left > 0 && l.Unit != "foot").Select(l => (CsvCell[])[l.ItemId, l.Description, "", Csv.Number(l.Packs.Sum(p => p.Count * p.Offer.PackSize) + l.FromStock), Csv.Number(l.Needed.Value), Csv.Number(l.Left), l.Unit, SurplusSheet.WhatToDo(l)])
                .Concat(plan.Cuts.SelectMany(cut => cut.Coils.Select((coil, c) => (CsvCell[])
                [
                    cut.ItemId, plan.Lines.First(l => l.ItemId == cut.ItemId).Description, Csv.Number(c + 1), Csv.Number(coil.Length.ToFeet()), Csv.Number((coil.Length - coil.Left).ToFeet()), Csv.Number(coil.Left.ToFeet()), "foot",
                    SurplusSheet.WhatToDo(cut, coil),
                ]))));
    }

    private static IEnumerable<CsvCell[]> Rows(PurchaseLine line)
    {
        CsvCell[] item = [line.ItemId, line.Description, Csv.Number(line.Needed.Value), line.Unit];
        return line.Packs.IsEmpty
            ? [[.. item, "", "", "", "", "", Csv.Number(line.FromStock), "", "", line.Cost is null ? "no price" : ""]]
            : line.Packs.Select(pack => (CsvCell[])
            [
                .. item, pack.Offer.Supplier, Csv.Number(pack.Offer.PackSize), Csv.Number(pack.Count), Csv.Number(pack.Offer.Price.ToDollars()),
                Csv.Number((pack.Offer.Price * pack.Count).ToDollars()), Csv.Number(line.FromStock), Csv.Number(line.Left), GoesBack(line, pack), pack.Offer.Note,
            ]);
    }

    private static string GoesBack(PurchaseLine line, PackCount pack) => line.Left == 0 ? "" : line.GoesBack(pack) ? "yes" : "no";

    private static IEnumerable<CsvCell[]> Rows(CutPlan cut, CutCoil coil, int number, Dictionary<string, CutRun> runs)
    {
        var marks = coil.Marks;
        for (var i = 0; i < coil.Pieces.Length; i++)
        {
            var (piece, mark) = (coil.Pieces[i], marks[i]);
            var run = CutRun.For(runs, piece);
            yield return
            [
                cut.ItemId, Csv.Number(number), Csv.Number(coil.Length.ToFeet()), coil.Offer?.Supplier ?? "", coil.Shelf?.Label ?? "", Csv.Number(i + 1), piece.Length.ToString(),
                Csv.Number(piece.Length.ToFeet()), mark.ToString(), Csv.Number(mark.ToFeet()), Csv.Number((coil.Length - mark).ToFeet()), piece.Run, run.Circuit, run.From, run.To, run.Role,
            ];
        }
    }
}
