using System.Diagnostics;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Engine.Tests.Edits;

/// <summary>An edit is made at each keystroke, so that it may take but a small part of the 100 ms in which an answer seems immediate.</summary>
/// <remarks>Source of 100 ms: R. B. Miller, Response time in man-computer conversational transactions, AFIPS 1968 (from memory).</remarks>
public sealed class EditSpeedTests(ITestOutputHelper output)
{
    private const int MostMilliseconds = 30;

    [Fact]
    public void Edit_OfAHouseWith150Devices_TakesAFewMilliseconds()
    {
        var job = Enumerable.Range(0, 3000).Select(HouseGen.Number).First(j => JobFile.Read(JobFile.Write(j), "house").Ok && Devices(j) >= 60);
        var room = job.Levels[0].Rooms.First(r => r.Kind is not RoomKind.Void).Id;
        job = job.With(r => r.Id == room ? r with { Placed = [.. r.Placed, .. Enumerable.Range(0, 150 - Devices(job)).Select(Device)] } : r);
        var times = Enumerable.Range(0, 200).Select(i => Time(job, room, i)).Skip(100).Order().ToList();
        output.WriteLine($"{Devices(job)} devices, {JobFile.Write(job).Length} characters: least {times[0]:0.0} ms, median {times[50]:0.0} ms, p95 {times[95]:0.0} ms");
        // The least: other tests run at the same time and may hold up any but a few.
        Assert.True(times[0] < MostMilliseconds, $"{times[0]} ms");
    }

    private static double Time(Job job, string room, int number)
    {
        var watch = Stopwatch.GetTimestamp();
        var edit = JobEditing.Between(job, job.With(r => r.Id == room ? r with { Name = $"Room {number}" } : r), "e", "name");
        Assert.True(JobEditing.Apply(job, edit).Ok);
        return Stopwatch.GetElapsedTime(watch).TotalMilliseconds;
    }

    private static PlacedDevice Device(int number) => new() { Id = $"more-{number}", Kind = DeviceKind.DuplexReceptacle, Wall = new WallSpot(1, Length.FromInches(number % 12)) };

    private static int Devices(Job job) => job.Levels.SelectMany(l => l.Rooms).Sum(r => r.Placed.Length + r.Counts.Sum(c => c.Count));
}
