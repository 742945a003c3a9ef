using System.Globalization;
using Bunit;
using Estimator.Documents.Boxes;
using Estimator.Engine;
using Estimator.Engine.Wiring.Joints;
using Estimator.Web.Boxes;
using Estimator.Web.Catalogues;
using Estimator.Web.Jobs;

namespace Estimator.Web.Tests.Boxes;

/// <summary>A card, read back from its picture, says what the trace says.</summary>
public sealed class BoxCardTests : WebContext
{
    [Theory]
    [InlineData("basement-finish")]
    [InlineData("two-storey-house")]
    public void Picture_OfEveryBox_ReadsBackAsItsTrace(string sample)
    {
        var estimate = JobEstimate.Compute(JobStarts.Sample(sample), CatalogueShelf.BuiltIn().Parts, Engine.Wiring.SearchDepth.Quick);
        for (var index = 0; index < estimate.Wiring.Boxes.Length; index++)
        {
            var card = Render<BoxCard>(p => p.Add(c => c.Estimate, estimate).Add(c => c.Index, index));
            var box = estimate.Wiring.Boxes[index];
            for (var j = 0; j < box.Joints.Length; j++)
            {
                var joint = box.Joints[j];
                var ends = card.FindAll($"path[data-run][data-joint='{j}']").Select(p => new ConductorEnd(int.Parse(p.GetAttribute("data-run")!, CultureInfo.InvariantCulture), Enum.Parse<InsulationColour>(p.GetAttribute("data-colour")!)));
                var screws = card.FindAll($"path[data-terminal][data-joint='{j}']").Select(p => (int.Parse(p.GetAttribute("data-device")!, CultureInfo.InvariantCulture), Enum.Parse<TerminalName>(p.GetAttribute("data-terminal")!)));
                Assert.Equal(joint.Ends.ToHashSet(), ends.ToHashSet());
                Assert.Equal(joint.Terminals.Select(t => (t.Device, t.Name)).ToHashSet(), screws.ToHashSet());
                Assert.Equal(joint.Connector ? joint.Conductors : 0, int.Parse(card.Find($"g[data-splice='{j}']").GetAttribute("data-count")!, CultureInfo.InvariantCulture));
            }
        }
    }

    [Fact]
    public void Joints_OfADrawing_StandApart()
    {
        var estimate = JobEstimate.Compute(JobStarts.Sample("two-storey-house"), CatalogueShelf.BuiltIn().Parts, Engine.Wiring.SearchDepth.Quick);
        Assert.All(estimate.Wiring.Boxes, box =>
        {
            var dots = BoxDrawing.Of(estimate, box).Joints.Select(j => j.Y).Order().ToList();
            Assert.All(dots.Zip(dots.Skip(1)), d => Assert.True(d.Second - d.First >= 18));
        });
    }
}
