using System.CommandLine;
using Estimator.Engine;

namespace Estimator.Cli.Takeoffs;

/// <summary>Runs all stages and prints the takeoff and the bid.</summary>
internal static class TakeoffVerb
{
    internal static Command Create(Shell shell)
    {
        var job = JobOptions.JobPath();
        var catalogue = JobOptions.Catalogue();
        var json = new Option<string?>("--json") { Description = "Write every stage with provenance to this file." };
        var csv = new Option<string?>("--csv") { Description = "Write the takeoff lines to this file." };
        var command = new Command("takeoff", "Runs all stages; prints cable, boxes, devices, hours and the bid.") { job, json, csv, catalogue };
        command.SetAction(parsed =>
        {
            var estimate = JobEstimate.Compute(JobOptions.ReadJob(parsed.GetValue(job)!), JobOptions.ReadCatalogue(parsed.GetValue(catalogue)));
            if (parsed.GetValue(json) is { } jsonPath)
            {
                Files.Write(jsonPath, EstimateJson.Write(estimate));
            }

            if (parsed.GetValue(csv) is { } csvPath)
            {
                Files.Write(csvPath, TakeoffCsv.Write(estimate.Takeoff), byteOrderMark: true);
            }

            TakeoffText.Write(estimate, shell.Output);
            return ExitCode.Done;
        });
        return command;
    }
}
