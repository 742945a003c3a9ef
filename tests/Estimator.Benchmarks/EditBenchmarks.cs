using BenchmarkDotNet.Attributes;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;

namespace Estimator.Benchmarks;

/// <summary>One keystroke in the two-storey sample: its edit made and applied. The reference is reading that job's file once.</summary>
/// <remarks>An answer seems immediate within 100 ms. Source: R. B. Miller, Response time in man-computer conversational transactions, AFIPS 1968 (from memory).</remarks>
public class EditBenchmarks
{
    private string _text = "";
    private Job _job = null!;
    private Job _renamed = null!;

    [GlobalSetup]
    public void Read()
    {
        _text = BenchmarkJobs.Text("two-storey-house");
        _job = JobFile.Read(_text, "two-storey-house").Job;
        var level = _job.Levels[0];
        _renamed = _job with { Levels = _job.Levels.SetItem(0, level with { Rooms = level.Rooms.SetItem(0, level.Rooms[0] with { Name = "Another name" }) }) };
    }

    [Benchmark(Baseline = true)]
    public bool JobFileRead() => JobFile.Read(_text, "two-storey-house").Ok;

    [Benchmark]
    public bool MakeAndApply() => JobEditing.Apply(_job, JobEditing.Between(_job, _renamed, "edit", "name")).Ok;
}
