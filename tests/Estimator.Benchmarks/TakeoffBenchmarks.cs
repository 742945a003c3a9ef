using BenchmarkDotNet.Attributes;
using Estimator.Engine;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.TestKit;

namespace Estimator.Benchmarks;

/// <summary>From the house to the bid. The reference is System.Text.Json reading the same job's file into a document and writing it again.</summary>
public class TakeoffBenchmarks
{
    private string _text = "";
    private Job _job = null!;

    [ParamsSource(nameof(Names))]
    public string Name { get; set; } = "";

    public static IEnumerable<string> Names => BenchmarkJobs.Names;

    [GlobalSetup]
    public void Read()
    {
        _text = BenchmarkJobs.Text(Name);
        _job = JobFile.Read(_text, Name).Job!;
    }

    [Benchmark(Baseline = true)]
    public int SystemTextJsonRoundTrip()
    {
        using var document = System.Text.Json.JsonDocument.Parse(_text);
        return System.Text.Json.JsonSerializer.Serialize(document.RootElement).Length;
    }

    [Benchmark]
    public bool JobFileRead() => JobFile.Read(_text, Name).Ok;

    [Benchmark]
    public decimal Takeoff() => JobEstimate.Compute(_job, Catalogues.Shipped).Bid.Price.Value;
}
