using Estimator.Web.Catalogues;
using Estimator.Web.Circuits;
using Estimator.Web.Jobs;

namespace Estimator.Web.Tests.Circuits;

public sealed class PanelDrawingTests
{
    [Theory]
    [InlineData("basement-finish")]
    [InlineData("two-storey-house")]
    public void Of_Sample_EachPoleHasItsPlaceOnceAndFreeSpacesStay(string sample)
    {
        var job = JobStarts.Sample(sample);
        var estimate = Engine.JobEstimate.Compute(job, CatalogueShelf.BuiltIn().Parts, Engine.Wiring.SearchDepth.Quick);
        var circuits = estimate.Wiring.Circuits;
        var panel = job.Panels[0];

        var spaces = PanelDrawing.Of(estimate.Schedules[panel.Id], circuits.Select((c, i) => (c.Id, i + 1)).ToDictionary(x => x.Id, x => x.Item2));

        var taken = spaces.SelectMany(s => Enumerable.Range(s.Row, s.Rows).Select(r => (r, s.Left))).ToList();
        Assert.Equal(panel.Spaces, taken.Count);
        Assert.Equal(taken.Count, taken.Distinct().Count());
        Assert.Equal(circuits.Count(c => c.Panel == 0), spaces.Count(s => s.Circuit > 0));
    }
}
