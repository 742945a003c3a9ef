using Estimator.Engine.House;
using Estimator.Engine.Rules;
using Estimator.Web.Start;

namespace Estimator.Web.Overview;

/// <summary>What an estimator expects of a figure before opening it. Outside it, the reason counts; it is no pass or fail.</summary>
/// <remarks>The figures stand in <c>job_bands.json</c>. Source: common practice, no source.</remarks>
/// <param name="Low">Low end.</param>
/// <param name="High">High end.</param>
public sealed record JobBand(decimal Low, decimal High)
{
    private static readonly RuleTable Table = RuleTable.Read("job_bands", Resources.Read("job_bands.json"));

    /// <summary>The band of a row.</summary>
    public static JobBand Of(string key) => new(Table[key].Number("low"), Table[key].Number("high"));

    /// <summary>The band of a figure that differs between open framing and finished walls.</summary>
    public static JobBand Of(string figure, bool oldWork) => Of($"{figure}_{(oldWork ? "old" : "new")}");

    /// <summary>Whether a value lies in it.</summary>
    public bool Holds(decimal value) => value >= Low && value <= High;

    /// <summary>Whether most of a job's rooms have finished walls.</summary>
    public static bool OldWork(Job job)
    {
        var rooms = job.Levels.SelectMany(l => l.Rooms).ToList();
        return rooms.Count(r => r.Walls is WallState.Finished) * 2 > rooms.Count;
    }
}
