using System.Globalization;
using Estimator.Engine;
using Estimator.Engine.House;

namespace Estimator.Documents.House;

/// <summary>What is wired, room by room and system by system, in counts.</summary>
internal static class ScopeWords
{
    /// <summary>Each room with work in it: what is put in, and how many openings that is.</summary>
    internal static IEnumerable<(string Room, string Things, int Openings)> ByRoom(JobEstimate estimate)
    {
        foreach (var room in estimate.House.Rooms)
        {
            var devices = estimate.Layout.Devices.Where(d => d.Place.Room == room.Index).ToList();
            var equipment = estimate.Layout.Equipment.Select((e, i) => (e, i)).Where(x => x.e.Place.Room == room.Index).Select(x => PlaceWords.Equipment(estimate, x.i)).ToList();
            if (devices.Count + equipment.Count > 0)
            {
                var things = devices.GroupBy(d => d.Kind).OrderBy(g => g.Key).Select(g => PlaceWords.Devices(g.Key, g.Count())).Concat(equipment);
                yield return (PlaceWords.Room(room), string.Join(", ", things), devices.Count + equipment.Count);
            }
        }
    }

    /// <summary>Each system with what belongs to it; the counts add up to the openings.</summary>
    internal static IEnumerable<(string System, string Things, int Openings)> BySystem(JobEstimate estimate)
    {
        foreach (var (system, belongs) in ((string, Func<DeviceKind, bool>)[])
        [
            ("Receptacles", DeviceTraits.IsReceptacle), ("Switches", DeviceTraits.IsSwitch), ("Lights and fans", DeviceTraits.IsLuminaireOrFan), ("Alarms", DeviceTraits.IsAlarm),
        ])
        {
            var kinds = estimate.Layout.Devices.Where(d => belongs(d.Kind)).GroupBy(d => d.Kind).OrderBy(g => g.Key).ToList();
            if (kinds.Count > 0)
            {
                yield return (system, string.Join(", ", kinds.Select(g => PlaceWords.Devices(g.Key, g.Count()))), kinds.Sum(g => g.Count()));
            }
        }

        if (estimate.Layout.Equipment.Length > 0)
        {
            yield return ("Equipment", string.Join(", ", estimate.Layout.Equipment.Select((_, i) => PlaceWords.Equipment(estimate, i))), estimate.Layout.Equipment.Length);
        }
    }

    /// <summary>How many circuits and openings.</summary>
    internal static string Circuits(JobEstimate estimate) =>
        string.Create(CultureInfo.InvariantCulture, $"{estimate.Wiring.Circuits.Length} new, {estimate.Takeoff.Openings.Value:0} openings in all");
}
