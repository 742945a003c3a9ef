using System.Globalization;
using Estimator.Documents;
using Estimator.Engine;
using Estimator.Engine.Findings;
using Estimator.Engine.Measures;
using Estimator.Engine.Pricing;

namespace Estimator.Cli.Takeoffs;

/// <summary>Prints an estimate for people, in invariant text.</summary>
internal static class TakeoffText
{
    private static readonly string[] Order =
        ["cable", "conduit", "wire", "box", "device", "luminaire", "alarm", "equipment", "plate", "breaker", "connector", "fastener", "bore", "bend", "panel", "service", "consumable", "site", "missing"];

    internal static void Write(JobEstimate estimate, TextWriter output)
    {
        output.WriteLine($"{estimate.House.Job.Name}");
        foreach (var proposal in estimate.House.Job.Proposals)
        {
            output.WriteLine($"  assumed: {proposal}");
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{estimate.House.Rooms.Length} rooms, {estimate.Takeoff.Openings.Value:0} openings, {estimate.Wiring.Circuits.Length} circuits"));
        foreach (var circuit in estimate.Wiring.Circuits)
        {
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"  {circuit.Id,-26} {circuit.BreakerA.Value,3:0} A {circuit.Poles}p {circuit.Protection,-13} {circuit.Wire,3} AWG {circuit.Outlets,3} outlets  {circuit.Name}"));
        }

        foreach (var category in estimate.Takeoff.Lines.GroupBy(l => l.Category).OrderBy(g => Array.IndexOf(Order, g.Key)))
        {
            output.WriteLine();
            output.WriteLine(category.Key);
            foreach (var line in category)
            {
                output.WriteLine(string.Create(
                    CultureInfo.InvariantCulture, $"  {line.Quantity.Value,9:0.#} {(line.Unit == "foot" ? "ft" : "ea"),-3} {line.Description}{(line.OwnerSupplied ? " (owner supplies)" : "")}  [{line.ItemId}]"));
            }
        }

        output.WriteLine();
        output.WriteLine("hours");
        foreach (var (phase, hours) in estimate.Labor.ByPhase)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {hours.Value,9:0.0} h   {phase}"));
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {estimate.Labor.Total.Value,9:0.0} h   in all (starting points; only some units have a published basis)"));
        Bid(estimate.Bid, [.. estimate.Purchase.NotPriced], output);
        Findings(estimate, output);
        output.WriteLine();
        output.WriteLine(Cautions.PlanningAid);
        output.WriteLine(Cautions.AtWork);
    }

    private static void Bid(Bid bid, IReadOnlyList<string> notPriced, TextWriter output)
    {
        output.WriteLine();
        output.WriteLine("bid");
        foreach (var line in bid.DirectCost.Where(l => l.Amount.Value != 0))
        {
            output.WriteLine($"  {Money.FromDollars(line.Amount.Value),13} {line.Label}");
        }

        output.WriteLine($"  {Money.FromDollars(bid.DirectTotal.Value),13} = direct cost");
        foreach (var line in bid.Additions.Where(l => l.Amount.Value != 0))
        {
            output.WriteLine($"  {Money.FromDollars(line.Amount.Value),13} {line.Label}");
        }

        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"  {Money.FromDollars(bid.Price.Value),13} = price; range {Money.FromDollars(bid.Low.Value)} to {Money.FromDollars(bid.High.Value)}; profit {bid.MarkupPercent.Value:0.0}% of cost, {bid.MarginPercent.Value:0.0}% of price"));
        output.WriteLine($"  {Money.FromDollars(bid.PricePerOpening.Value),13} an opening; {Money.FromDollars(bid.PricePerSquareFoot.Value)} a square foot; stands for {bid.ValidDays} days");
        if (notPriced.Count > 0)
        {
            output.WriteLine($"  THE PRICE IS NOT WHOLE: nobody offers {string.Join("; ", notPriced)}.");
        }

        output.WriteLine("  Prices are the catalogue's; those of the built-in catalogue are invented samples.");
    }

    private static void Findings(JobEstimate estimate, TextWriter output)
    {
        output.WriteLine();
        var unjudged = estimate.Findings.Count(f => f.Severity is Severity.Unjudged);
        output.WriteLine($"findings: {estimate.Findings.Count(f => f.Severity is Severity.Mandatory)} mandatory, {estimate.Findings.Count(f => f.Severity is Severity.Advice)} advice, {unjudged} unjudged");
        foreach (var finding in estimate.Findings.Where(f => f.Severity is Severity.Mandatory or Severity.Advice).Take(12))
        {
            output.WriteLine($"  {CheckVerb.Line(finding)}");
        }
    }
}
