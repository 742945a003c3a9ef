using System.CommandLine;
using Estimator.Cli.Calc;
using Estimator.Cli.Import;
using Estimator.Cli.Takeoffs;

namespace Estimator.Cli;

/// <summary>The command line: its verbs, and what becomes of wrong input and faults.</summary>
public static class Verbs
{
    /// <summary>Runs a command line.</summary>
    /// <param name="args">The words.</param>
    /// <param name="input">Standard input.</param>
    /// <param name="output">Standard output: results.</param>
    /// <param name="error">Standard error: messages.</param>
    /// <returns>0 done, 1 done with findings or differences, 2 wrong input, 3 a fault of ours.</returns>
    public static int Run(string[] args, TextReader input, TextWriter output, TextWriter error)
    {
        var shell = new Shell(input, output, error);
        var root = new RootCommand("Turns a plan of a house into circuits, cable, boxes, parts, hours and a bid.")
        {
            TakeoffVerb.Create(shell), CheckVerb.Create(shell), ExplainVerb.Create(shell), CalcVerb.Create(shell), BuyVerb.Create(shell), ImportVerb.Create(shell),
            SchemaVerb.Create(shell), SampleVerb.Create(shell),
        };
        try
        {
            var parsed = root.Parse(args);
            var code = parsed.Invoke(new InvocationConfiguration { Output = output, Error = error, EnableDefaultExceptionHandler = false });
            return parsed.Errors.Count > 0 ? ExitCode.WrongInput : code;
        }
        catch (WrongInputException e)
        {
            error.WriteLine(e.Message);
            return ExitCode.WrongInput;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            error.WriteLine($"estimator: {e.Message}");
            return ExitCode.WrongInput;
        }
        catch (Exception e)
        {
            error.WriteLine($"estimator: a fault of this program, not of your input: {e.GetType().Name}: {e.Message}");
            error.WriteLine(e.StackTrace);
            return ExitCode.Fault;
        }
    }
}
