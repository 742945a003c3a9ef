using System.CommandLine;
using Estimator.Documents;
using Estimator.Documents.Purchase;
using Estimator.Engine;
using Estimator.Engine.Purchase;

namespace Estimator.Cli.Takeoffs;

/// <summary>Prints one purchase list and cut plan over several jobs.</summary>
internal static class BuyVerb
{
    internal static Command Create(Shell shell)
    {
        var jobs = new Argument<string[]>("jobs") { Arity = ArgumentArity.OneOrMore, Description = "Job files, or sample:NAME." };
        var catalogue = JobOptions.Catalogue();
        var csv = new Option<string?>("--csv") { Description = "Write the purchase lines to this file." };
        var workbook = JobOptions.Workbook("Write the purchase list, cut plan and leftovers to this file.");
        var command = new Command("buy", "Prints one purchase list and cut plan over several jobs.") { jobs, csv, workbook, catalogue };
        command.SetAction(parsed =>
        {
            var parts = JobOptions.ReadCatalogue(parsed.GetValue(catalogue));
            var estimates = parsed.GetValue(jobs)!.Select(j => JobEstimate.Compute(JobOptions.ReadJob(j), parts)).ToList();
            var plan = Buying.Together([.. estimates.Select(e => (e.House.Job.Id, e.Takeoff))], parts);
            if (parsed.GetValue(csv) is { } path)
            {
                Files.Write(path, PurchaseTables.Purchase(plan), byteOrderMark: true);
            }

            if (parsed.GetValue(workbook) is { } workbookPath)
            {
                Files.Write(workbookPath, PurchaseWorkbook.Write(plan, estimates, Letterhead.Blank));
            }

            PurchaseText.Write(plan, shell.Output);
            return ExitCode.Done;
        });
        return command;
    }
}
