namespace Estimator.Cli;

/// <summary>What a verb answers to the shell.</summary>
internal static class ExitCode
{
    internal const int Done = 0;
    internal const int Findings = 1;
    internal const int WrongInput = 2;
    internal const int Fault = 3;
}
