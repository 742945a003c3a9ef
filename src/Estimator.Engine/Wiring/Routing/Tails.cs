using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;

namespace Estimator.Engine.Wiring.Routing;

/// <summary>Cable left at the ends of a run to make up the connections.</summary>
/// <remarks>Source: common practice, no source; the practice table gives the figures.</remarks>
internal static class Tails
{
    internal static int Sixteenths(HouseLayout layout, DraftBox box) => LengthAt(layout, box).ToSixteenths();

    internal static int PanelSixteenths(Job job) => (job.Practice.PanelTail ?? PracticeDefaults.PanelTail.Inches()).ToSixteenths();

    internal static Fact At(HouseLayout layout, DraftBox box, PageWriter page) =>
        box.Equipment < 0 && box.Gangs == 1 && layout.House.Job.Practice.BoxTail is { } own
            ? page.Given("$.practice.box_tail", "Cable left at a box", own)
            : RowFor(box).ReadInches(page);

    internal static Fact AtPanel(Job job, PageWriter page) => job.Practice.PanelTail is { } own
        ? page.Given("$.practice.panel_tail", "Cable left at the panel", own)
        : PracticeDefaults.PanelTail.ReadInches(page);

    private static Length LengthAt(HouseLayout layout, DraftBox box) =>
        box.Equipment < 0 && box.Gangs == 1 && layout.House.Job.Practice.BoxTail is { } own ? own : RowFor(box).Inches();

    private static RuleRow RowFor(DraftBox box) => box switch
    {
        { Equipment: >= 0 } => PracticeDefaults.ApplianceTail,
        { Gangs: > 1 } => PracticeDefaults.MultiGangTail,
        _ => PracticeDefaults.BoxTail,
    };
}
