using System.CommandLine;

namespace Estimator.Cli.Calc;

/// <summary>One calculator: JSON in, JSON out.</summary>
internal static class CalcVerb
{
    internal static Command Create(Shell shell)
    {
        var command = new Command("calc", "One calculator: JSON in, JSON out.");
        command.SetAction(_ => { shell.Output.WriteLine(); return ExitCode.Done; });
        return command;
    }
}
