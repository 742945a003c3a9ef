using Estimator.Engine.Findings;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>Counter receptacles stand at a height at which they count, and none stands where 2026 bars it.</summary>
/// <remarks>
/// The countertop is taken at its usual height. Of receptacles below it 2017 counts some by exception and 2020 counts them, both to 12 in; later editions count
/// none. Source: NEC 210.52(C), 210.52(C)(4) in 2026.
/// </remarks>
internal static class CounterHeights
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        var top = PlacingLimits.CounterTop.Inches().ToSixteenths();
        return context.House.Rooms.Where(r => !r.Source.Counters.IsEmpty)
            .SelectMany(r => context.In(r.Index).Where(d => d.Kind.IsReceptacle() && d.Kind is not DeviceKind.Receptacle240V && d.Serves is not ServedPlace.Outdoors))
            .SelectMany(d => Counts(context, d, top).Concat(Barred(context, d, top)));
    }

    private static IEnumerable<Finding> Counts(CheckContext context, LaidDevice device, int top)
    {
        if (device.Serves is not (ServedPlace.Counter or ServedPlace.Island) || context.Rule("counter-height") is not { } rule)
        {
            return [];
        }

        var above = PlacingLimits.CounterAbove.Inches().ToSixteenths();
        var below = context.Edition is CodeEdition.Nec2017 or CodeEdition.Nec2020 ? PlacingLimits.CounterBelow2020.Inches().ToSixteenths() : 0;
        var height = device.Place.Height - top;
        return context.Ask(
            rule, height <= above && height >= -below,
            () => height > 0
                ? $"{context.CalledAtStart(device)} stands {Length.FromSixteenths(height)} above a countertop of {Length.FromSixteenths(top)}; {Length.FromSixteenths(above)} is the most at which it counts for the counter. Put it lower."
                : (FormattableString)$"{context.CalledAtStart(device)} stands {Length.FromSixteenths(-height)} below a countertop of {Length.FromSixteenths(top)} and does not count for the counter. Put it on or above the surface.",
            [device.Id, context.House.Rooms[device.Place.Room].Source.Id]);
    }

    private static IEnumerable<Finding> Barred(CheckContext context, LaidDevice device, int top)
    {
        if (context.Rule("below-counter") is not { } rule)
        {
            return [];
        }

        var reach = Length.FromInches(context.Limit(rule.Code, PlacingLimits.BelowCounter2026)).ToSixteenths();
        var below = top - device.Place.Height;
        return context.Ask(
            rule, below <= 0 || below >= reach || !UnderACounter(context, device, reach),
            () => $"{context.CalledAtStart(device)} stands {Length.FromSixteenths(below)} below a countertop, at it or less than {Length.FromSixteenths(reach)} beside it; no receptacle may, whatever it serves. Put it on or above the surface, or lower.",
            [device.Id, context.House.Rooms[device.Place.Room].Source.Id]);
    }

    private static bool UnderACounter(CheckContext context, LaidDevice device, int reach)
    {
        if (device.Serves is ServedPlace.Counter or ServedPlace.Island)
        {
            return true;
        }

        var room = context.House.Rooms[device.Place.Room];
        return device.Place.Side >= 0 && room.Source.Counters.Where(c => c.Kind is CounterKind.Wall && c.Wall is not null)
            .Select(c => WallSpaces.OfCounter(context.House, room, c.Wall!, c.Length)).Any(s => Beside(room, s, device.Place, reach));
    }

    // Along the outline, from the reach before the counter's start to the reach beyond its end.
    private static bool Beside(FramedRoom room, WallSpace counter, Placement place, int reach)
    {
        var starts = WallSpaces.SideStarts(room);
        var from = (starts[place.Side] + place.Offset - counter.From + reach + starts[^1]) % starts[^1];
        return from < counter.Length + 2 * reach && from > 0;
    }
}
