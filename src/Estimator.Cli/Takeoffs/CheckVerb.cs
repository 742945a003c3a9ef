using System.CommandLine;
using Estimator.Engine.Findings;

namespace Estimator.Cli.Takeoffs;

/// <summary>Prints the findings, worst first.</summary>
internal static class CheckVerb
{
    internal static Command Create(Shell shell)
    {
        var job = JobOptions.JobPath();
        var catalogue = JobOptions.Catalogue();
        var command = new Command("check", "Prints findings, worst first, with article and place; 1 where one is mandatory.") { job, catalogue };
        command.SetAction(parsed =>
        {
            var estimate = JobOptions.Estimate(parsed.GetValue(job)!, parsed.GetValue(catalogue));
            foreach (var finding in estimate.Findings)
            {
                shell.Output.WriteLine(Line(finding));
            }

            return estimate.Findings.Any(f => f.Severity is Severity.Mandatory) ? ExitCode.Findings : ExitCode.Done;
        });
        return command;
    }

    internal static string Line(Finding finding)
    {
        var rule = finding.Article.Length > 0 ? $" [{finding.Edition} {finding.Article}{(finding.Verified || finding.Severity is Severity.Unjudged ? "" : ", not verified")}]" : "";
        var where = finding.Where.IsEmpty ? "" : $" ({string.Join(", ", finding.Where.Take(6))}{(finding.Where.Length > 6 ? ", ..." : "")})";
        return $"{finding.Severity.ToString().ToLowerInvariant()}: {finding.Code}: {finding.Text}{rule}{where}";
    }
}
