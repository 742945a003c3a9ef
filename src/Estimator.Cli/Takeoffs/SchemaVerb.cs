using System.CommandLine;
using System.Text.Json;
using Estimator.Engine.JobFiles;

namespace Estimator.Cli.Takeoffs;

/// <summary>Writes the JSON Schema of the job file.</summary>
internal static class SchemaVerb
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, NewLine = "\n" };

    internal static Command Create(Shell shell)
    {
        var command = new Command("schema", "Writes the JSON Schema of the job file.");
        command.SetAction(_ =>
        {
            shell.Output.WriteLine(JobSchema.Make().ToJsonString(Indented));
            return ExitCode.Done;
        });
        return command;
    }
}
