using System.Globalization;
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
            var packs = line.Packs.IsEmpty ? "no price" : string.Join(" + ", line.Packs.Select(p => $"{p.Count} x {p.Offer.PackSize} ({p.Offer.Supplier})"));
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"{line.Needed.Value,9:0.#} {(line.Unit == "foot" ? "ft" : "ea"),-3} {line.Description,-60} {packs}, left {line.Left:0.#}  {line.Cost?.Value.ToString() ?? "-"}"));
        }

        output.WriteLine($"material {Money.FromDollars(plan.Total.Value)}");
        foreach (var cut in plan.Cuts)
        {
            output.WriteLine();
            output.WriteLine($"cut plan {cut.ItemId}: {cut.Cost}, {(cut.Proven ? "proven cheapest" : $"no plan costs less than {cut.LowerBound}")}");
            for (var c = 0; c < cut.Coils.Length; c++)
            {
                output.WriteLine($"  coil {c + 1} of {cut.Coils[c].Offer.PackSize} ft: {string.Join(", ", cut.Coils[c].Pieces.Select(p => $"{p.Length} ({p.Run})"))}; left {cut.Coils[c].Left}");
            }
        }

        foreach (var finding in plan.Findings)
        {
            output.WriteLine(CheckVerb.Line(finding));
        }
    }
}
