using Estimator.Engine.House;
using Estimator.Engine.Layout;

namespace Estimator.Engine.Pricing;

/// <summary>Composes what a price rests on: what was stated, and what the program took for granted where nothing was.</summary>
/// <remarks>Source: common practice, no source.</remarks>
internal static class BidAssumptions
{
    internal static IEnumerable<(string Id, string Text)> Of(HouseLayout layout)
    {
        var job = layout.House.Job;
        yield return ("as/hours", job.Practice.Occupied
            ? "The house is lived in; rooms are cleared where we work, in ordinary working hours and without a break of more than a day."
            : "The site is free for us in ordinary working hours, with light and room to work.");
        var finished = layout.House.Rooms.Where(r => r.Source.Walls is WallState.Finished).Select(r => r.Source.Called()).ToList();
        yield return ("as/walls", finished.Count == 0
            ? "Framing is open when we rough in; walls are closed after the inspection."
            : $"Finished walls, in which cable is fished: {string.Join(", ", finished)}. All other framing is open when we rough in.");
        if (layout.House.Rooms.Any(r => r.Arranged))
        {
            yield return ("as/arranged", FormattableString.Invariant($"{layout.House.Rooms.Count(r => r.Arranged)} rooms were given by their sizes alone; where they lie, and so the length of cable, is assumed."));
        }

        var counted = layout.Devices.Count(d => d.Place.Assumed);
        if (counted > 0)
        {
            yield return ("as/places", FormattableString.Invariant($"{counted} devices stand where the plan proposes; before rough-in one may still be moved along its wall."));
        }

        foreach (var panel in job.Panels.Where(p => p.Existing))
        {
            yield return ($"as/panel-{panel.Id}", $"{panel.Called()} is sound, {(panel.Make is { Length: > 0 } make ? $"its make is as stated ({make})" : "it takes breakers of a common make")}, and its free spaces are as stated.");
        }

        if (job.Service is null && job.Panels.All(p => p.Existing))
        {
            yield return ("as/service", "The service that is there is sound and large enough; nothing is done to it.");
        }

        foreach (var amendment in job.Code.Amendments.Where(a => a.Text.Length > 0))
        {
            yield return ($"as/local-{amendment.Id}", $"Local rule: {amendment.Text}");
        }
    }
}
