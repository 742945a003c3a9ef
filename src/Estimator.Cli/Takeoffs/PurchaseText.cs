using System.Globalization;
using Estimator.Documents.Purchase;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase;

namespace Estimator.Cli.Takeoffs;

/// <summary>Prints a purchase list and its cut plan.</summary>
internal static class PurchaseText
{
    internal static void Write(PurchasePlan plan, TextWriter output)
    {
        foreach (var line in plan.Lines)
        {
            var packs = line.Packs.IsEmpty ? line.Cost is null ? "no price" : "from the shelf" : string.Join(" + ", line.Packs.Select(p => $"{p.Count} x {p.Offer.PackSize} ({p.Offer.Supplier})"));
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"{line.Needed.Value,9:0.#} {(line.Unit == "foot" ? "ft" : "ea"),-3} {line.Description,-60} {packs}, left {line.Left:0.#}  {line.Cost?.Value.ToString() ?? "-"}"));
        }

        output.WriteLine($"material {Money.FromDollars(plan.Total.Value)}");
        foreach (var cut in plan.Cuts)
        {
            output.WriteLine();
            output.WriteLine($"cut plan {cut.ItemId}: {CutWords.Of(cut)}");
            for (var c = 0; c < cut.Coils.Length; c++)
            {
                var (coil, marks) = (cut.Coils[c], cut.Coils[c].Marks);
                output.WriteLine($"  coil {c + 1}, {CutWords.Coil(coil)}: {string.Join(", ", coil.Pieces.Select((p, i) => $"{p.Length} to mark {marks[i]} ({p.Run})"))}; left {coil.Left}{(cut.IsKept(coil) ? ", keep" : "")}");
            }
        }

        foreach (var finding in plan.Findings)
        {
            output.WriteLine(CheckVerb.Line(finding));
        }
    }
}
