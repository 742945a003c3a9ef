using System.CommandLine;
using Estimator.Engine;
using Estimator.Engine.Explanations;

namespace Estimator.Cli.Takeoffs;

/// <summary>Prints the arithmetic and sources behind one line.</summary>
internal static class ExplainVerb
{
    internal static Command Create(Shell shell)
    {
        var job = JobOptions.JobPath();
        var item = new Argument<string>("item") { Description = "Item of the takeoff, line of the bid, or hours, price, low, high." };
        var depth = new Option<int>("--depth") { Description = "How deep to open the tree.", DefaultValueFactory = _ => 12 };
        var catalogue = JobOptions.Catalogue();
        var command = new Command("explain", "Prints the arithmetic and sources behind one takeoff or bid line.") { job, item, depth, catalogue };
        command.SetAction(parsed =>
        {
            var estimate = JobOptions.Estimate(parsed.GetValue(job)!, parsed.GetValue(catalogue));
            var lines = Explainable(estimate);
            var wanted = parsed.GetValue(item)!;
            if (!lines.TryGetValue(wanted, out var node))
            {
                throw new WrongInputException($"item: found '{wanted}'; one of {string.Join(", ", lines.Keys)} is accepted.");
            }

            shell.Output.Write(ExplanationText.Render(estimate.Book, node, parsed.GetValue(depth)));
            return ExitCode.Done;
        });
        return command;
    }

    private static SortedDictionary<string, NodeRef> Explainable(JobEstimate estimate)
    {
        var lines = new SortedDictionary<string, NodeRef>(StringComparer.Ordinal)
        {
            ["hours"] = estimate.Labor.Total.Node,
            ["price"] = estimate.Bid.Price.Node,
            ["low"] = estimate.Bid.Low.Node,
            ["high"] = estimate.Bid.High.Node,
        };
        foreach (var line in estimate.Takeoff.Lines)
        {
            lines.TryAdd(line.ItemId, line.Quantity.Node);
        }

        foreach (var line in estimate.Bid.DirectCost.Concat(estimate.Bid.Additions))
        {
            lines.TryAdd(line.Id, line.Amount.Node);
        }

        return lines;
    }
}
