using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using Estimator.TestKit;

namespace Estimator.Browser.Tests;

/// <summary>The program as a user starts it, on a data folder, until it is killed.</summary>
internal sealed class RunningServer : IAsyncDisposable
{
    private readonly Process _process;

    private const int WordsKept = 40;
    private readonly ConcurrentQueue<string> _words = [];

    private RunningServer(Process process, string address) => (_process, Address) = (process, address);

    /// <summary>Address of the first page, without a slash at its end.</summary>
    internal string Address { get; }

    /// <summary>Its process.</summary>
    internal int ProcessId => _process.Id;

    /// <summary>What it said last, such as faults with their stacks.</summary>
    internal string LastWords => string.Join('\n', _words);

    /// <summary>Starts it.</summary>
    /// <param name="folder">Its data folder.</param>
    /// <param name="port">Its port; 0 takes a free one.</param>
    internal static async Task<RunningServer> StartAsync(string folder, int port = 0)
    {
        const string Words = "The estimator is at ";
        var program = Path.Combine(TestData.Repository, "src", "Estimator.Web", "bin", "Release", "net10.0", "Estimator.Web.dll");
        var process = Process.Start(new ProcessStartInfo("dotnet", [program, "--urls", string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{port}"), "--data-folder", folder])
        {
            RedirectStandardOutput = true,
            UseShellExecute = false,
            // A fault then says in the page what it was.
            Environment = { ["ASPNETCORE_DETAILEDERRORS"] = "true" },
        })!;
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            if (line.StartsWith(Words, StringComparison.Ordinal))
            {
                var server = new RunningServer(process, line[Words.Length..].Trim().TrimEnd('/'));
                _ = server.ListenAsync();
                return server;
            }
        }

        throw new InvalidOperationException($"{program} ended before it said where it is; build it in Release first.");
    }

    /// <summary>Ends it at once, as a power cut would.</summary>
    public async ValueTask DisposeAsync()
    {
        if (!_process.HasExited)
        {
            _process.Kill(entireProcessTree: true);
            await _process.WaitForExitAsync();
        }

        _process.Dispose();
    }

    // What it says later is read on, or a full pipe would stop it.
    private async Task ListenAsync()
    {
        while (await _process.StandardOutput.ReadLineAsync() is { } line)
        {
            _words.Enqueue(line);
            while (_words.Count > WordsKept && _words.TryDequeue(out _))
            {
            }
        }
    }
}
