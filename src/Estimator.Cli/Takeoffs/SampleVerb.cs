using System.CommandLine;

namespace Estimator.Cli.Takeoffs;

/// <summary>Writes a sample job.</summary>
internal static class SampleVerb
{
    internal static Command Create(Shell shell)
    {
        var name = new Argument<string?>("name") { Arity = ArgumentArity.ZeroOrOne, Description = "Which sample; left out, the names are listed." };
        var command = new Command("sample", "Writes a sample job to standard output.") { name };
        command.SetAction(parsed =>
        {
            shell.Output.Write(parsed.GetValue(name) is { } wanted ? Samples.Read(wanted) : string.Join("\n", Samples.Names) + "\n");
            return ExitCode.Done;
        });
        return command;
    }
}
