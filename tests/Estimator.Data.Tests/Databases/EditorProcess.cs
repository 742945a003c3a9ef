using System.Diagnostics;

namespace Estimator.Data.Tests.Databases;

/// <summary>The editor program, started by a test to be killed.</summary>
internal sealed class EditorProcess : IDisposable
{
    private readonly Process _process;

    private EditorProcess(Process process) => _process = process;

    internal static EditorProcess Start(params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet") { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "Estimator.Data.Editor.dll"));
        Array.ForEach(arguments, start.ArgumentList.Add);
        return new EditorProcess(Process.Start(start)!);
    }

    /// <summary>The next line that it says; null at the end.</summary>
    internal async Task<string?> LineAsync() => await _process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken);

    /// <summary>Kills it without warning (SIGKILL) and gives the lines that it had said and nobody had read.</summary>
    internal async Task<IReadOnlyList<string>> KillAsync()
    {
        _process.Kill();
        var rest = await _process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await _process.WaitForExitAsync(TestContext.Current.CancellationToken);

        // A line that was cut off was not said: only whole lines count.
        return [.. rest.Split('\n')[..^1]];
    }

    internal async Task<string> FailureAsync() => await _process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);

    public void Dispose()
    {
        if (!_process.HasExited)
        {
            _process.Kill();
        }

        _process.Dispose();
    }
}
