using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Engines;
using BenchmarkDotNet.Exporters;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace Estimator.Benchmarks;

/// <summary>Twenty measured runs each, in this process: median, spread, ratio to the reference of the same row, memory allocated.</summary>
internal sealed class InOneProcess : ManualConfig
{
    private const int Runs = 20;

    public InOneProcess()
    {
        AddJob(Job.Default.WithToolchain(InProcessEmitToolchain.Instance).WithStrategy(RunStrategy.Monitoring).WithWarmupCount(3).WithIterationCount(Runs));
        AddDiagnoser(MemoryDiagnoser.Default);
        AddColumnProvider(DefaultColumnProviders.Instance);
        AddColumn(StatisticColumn.Median, StatisticColumn.P95, BaselineRatioColumn.RatioMean);
        AddLogger(ConsoleLogger.Default);
        AddExporter(MarkdownExporter.Console);
        WithArtifactsPath(Path.Combine(AppContext.BaseDirectory, "results"));
        WithOptions(ConfigOptions.DisableLogFile);
    }
}
