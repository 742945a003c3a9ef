using System.CommandLine;
using Estimator.Engine.JobFiles;

namespace Estimator.Cli.Import;

/// <summary>Turns a neutral floor plan into a job, devices suggested.</summary>
internal static class ImportVerb
{
    internal static Command Create(Shell shell)
    {
        var plan = new Argument<string>("plan") { Description = "Neutral floor plan, neutral-floor-plan/1." };
        var to = new Option<string>("--out") { Description = "Write the job to this file.", Required = true };
        var edition = new Option<string>("--edition") { Description = "NEC-2017, NEC-2020, NEC-2023 or NEC-2026.", DefaultValueFactory = _ => "NEC-2023" };
        var devices = new Option<string?>("--devices") { Description = "Device counts by room, published-device-counts/1, in place of suggestions." };
        var command = new Command("import", "Turns a neutral floor plan into a job, devices suggested.") { plan, to, edition, devices };
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(plan)!;
            var counts = parsed.GetValue(devices) is { } countsPath ? DeviceCounts.Read(Files.Read(countsPath), countsPath) : null;
            var job = PlanImport.ToJob(NeutralPlan.Read(Files.Read(path), path), Editions.Parse(parsed.GetValue(edition)!), counts);
            Files.Write(parsed.GetValue(to)!, JobFile.Write(job));
            shell.Error.WriteLine($"{path}: {job.Levels.Sum(l => l.Rooms.Length)} rooms on {job.Levels.Length} levels.");
            foreach (var proposal in job.Proposals)
            {
                shell.Error.WriteLine($"  {proposal}");
            }

            return ExitCode.Done;
        });
        return command;
    }
}
