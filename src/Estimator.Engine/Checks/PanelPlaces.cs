using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>Panels hang where they may, with room to work in front, and every circuit in them is described.</summary>
/// <remarks>A panel that hangs there already is advised on, not refused. Source: NEC 240.24(D) to (F), 230.70(A)(2), 110.26(A), 408.4(A).</remarks>
internal static class PanelPlaces
{
    internal static IEnumerable<Finding> Judge(CheckContext context) =>
        context.Layout.Panels.SelectMany(p => Place(context, p).Concat(Space(context, p)).Concat(Directory(context, p)));

    private static IEnumerable<Finding> Place(CheckContext context, LaidPanel panel)
    {
        if (context.Rule("panel-place") is not { } rule)
        {
            return [];
        }

        var kind = context.House.Rooms[panel.Place.Room].Source.Kind;
        return context.Ask(
            rule, kind is not (RoomKind.Closet or RoomKind.Bathroom or RoomKind.Stair),
            () => $"Panel {panel.Source.Called()} hangs in {context.RoomName(panel.Place.Room)}; breakers may not be in a clothes closet or a bathroom, nor over the steps of a stair. Hang it elsewhere; work on a panel is for licensed people.",
            [panel.Source.Id], Weight(panel));
    }

    private static IEnumerable<Finding> Space(CheckContext context, LaidPanel panel)
    {
        if (context.Rule("working-space") is not { } rule || panel.Place.Side < 0)
        {
            return [];
        }

        var depth = Length.FromInches(context.Limit(rule.Code, PlacingLimits.WorkingDepth));
        return context.Ask(
            rule, WorkingSpace.Clear(context.House, panel.Place.Room, panel.Place.Side, panel.Place.Offset, depth),
            () => $"{context.RoomName(panel.Place.Room)} leaves less than {depth} by {PlacingLimits.WorkingWidth.Inches()} by {PlacingLimits.WorkingHeight.Inches()} clear in front of panel {panel.Source.Called()}. Hang it on a wall with that space.",
            [panel.Source.Id, context.House.Rooms[panel.Place.Room].Source.Id], Weight(panel));
    }

    private static IEnumerable<Finding> Directory(CheckContext context, LaidPanel panel)
    {
        if (context.Rule("panel-directory") is not { } rule)
        {
            return [];
        }

        var nameless = panel.Source.Circuits.Where(c => c.Name.Length == 0).ToList();
        return context.Ask(
            rule, nameless.Count == 0,
            () => $"{nameless.Count} circuits of panel {panel.Source.Called()} have no description. Find out what they feed and write it into the directory.", [panel.Source.Id], Severity.Advice);
    }

    private static Severity Weight(LaidPanel panel) => panel.Source.Existing ? Severity.Advice : Severity.Mandatory;
}
