using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Web.Catalogues;
using Estimator.Web.Findings;
using Estimator.Web.Jobs;

namespace Estimator.Web.Tests.Findings;

public sealed class MendsTests
{
    public static TheoryData<string, string, DeviceKind> Removed => new()
    {
        { "two-storey-house", "required-receptacle", DeviceKind.DuplexReceptacle },
        { "two-storey-house", "smoke-alarm", DeviceKind.SmokeAlarm },
        { "two-storey-house", "lighting-outlet", DeviceKind.CeilingLight },
        { "two-storey-house", "entrance-light", DeviceKind.WallLight },
        { "basement-finish", "receptacle-spacing", DeviceKind.DuplexReceptacle },
    };

    // Every mandatory finding that offers a mend is gone, or smaller, once its mend is made often enough.
    [Theory]
    [MemberData(nameof(Removed))]
    public void For_FindingOfRemovedDevices_MendingEndsIt(string sample, string code, DeviceKind removed)
    {
        var job = JobStarts.Sample(sample);
        foreach (var room in RoomActs.All(job).ToList())
        {
            job = RoomActs.With(job, room.Id, r => r with { Counts = [.. r.Counts.Where(c => c.Kind != removed)] });
        }

        var finding = Findings(job).First(f => f.Code == code);
        var where = finding.Where[0];
        for (var step = 0; step < 40 && Findings(job).FirstOrDefault(f => f.Code == code && f.Where[0] == where) is { } still; step++)
        {
            var mend = Mends.For(still, job);
            Assert.NotNull(mend);
            job = mend.Change(job);
        }

        Assert.DoesNotContain(Findings(job), f => f.Code == code && f.Where[0] == where);
    }

    private static System.Collections.Immutable.ImmutableArray<Finding> Findings(Job job) => Engine.JobEstimate.Compute(job, CatalogueShelf.BuiltIn().Parts, Engine.Wiring.SearchDepth.Quick).Findings;
}
