using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Web.Jobs;

namespace Estimator.Web.Findings;

/// <summary>The mend that each kind of finding offers. Where none fits, the finding's own sentence says what to do.</summary>
public static class Mends
{
    /// <summary>The mend of a finding; null where it takes more than one step or a decision of the user.</summary>
    public static Mend? For(Finding finding, Job job) => finding.Code switch
    {
        "receptacle-spacing" => Device(finding, job, "Place receptacle", DeviceKind.DuplexReceptacle),
        "required-receptacle" => Required(finding, job),
        "counter-receptacles" => Device(finding, job, "Place receptacle", DeviceKind.DuplexReceptacle, finding.Article.EndsWith("(2)", StringComparison.Ordinal) ? ServedPlace.Island : ServedPlace.Counter),
        "smoke-alarm" => Alarm(finding, job),
        "lighting-outlet" => Room(finding, job) is { } room
            ? new Mend("Add light and switch", $"{RoomActs.Name(room)}: light and switch", j => RoomActs.Add(RoomActs.Add(j, room.Id, DeviceKind.CeilingLight), room.Id, DeviceKind.SinglePoleSwitch))
            : null,
        "entrance-light" => Room(finding, job) is { } entered
            ? new Mend(
                "Add outside light", $"{RoomActs.Name(entered)}: light outside and its switch",
                j => RoomActs.Add(RoomActs.Add(j, entered.Id, DeviceKind.WallLight, ServedPlace.Outdoors), entered.Id, DeviceKind.SinglePoleSwitch))
            : null,
        "voltage-drop" => new Mend(
            "Take thicker cable", "Thicker cable where the voltage drop passes what is advised",
            j => j with { Practice = j.Practice with { BranchVoltageDropPercent = Percent.FromHundredths(PracticeDefaults.BranchVoltageDropPercent.Number()) } }),
        _ => null,
    };

    private static Mend? Required(Finding finding, Job job) => Room(finding, job) is not { } room
        ? null
        : room.Kind is RoomKind.Bathroom
            ? Device(finding, job, "Place receptacle", DeviceKind.GfciReceptacle, ServedPlace.Basin)
            : Device(finding, job, "Place receptacle", DeviceKind.DuplexReceptacle);

    private static Mend? Alarm(Finding finding, Job job)
    {
        // An alarm of a level hangs outside its bedrooms: in the hall, else where people pass, else in any room that is lived in.
        var room = Room(finding, job) ?? job.Levels.Where(l => finding.Where.Contains(l.Id)).SelectMany(l => l.Rooms)
            .Where(r => r.Kind is not (RoomKind.Bedroom or RoomKind.Bathroom or RoomKind.Closet or RoomKind.Garage or RoomKind.Void or RoomKind.Outdoors or RoomKind.Attic or RoomKind.Crawl))
            .OrderBy(r => r.Kind switch { RoomKind.Hall => 0, RoomKind.Foyer => 1, RoomKind.Stair => 2, _ => 3 }).FirstOrDefault();
        return room is null ? null : new Mend("Place alarm", $"{RoomActs.Name(room)}: smoke alarm", j => RoomActs.Add(j, room.Id, DeviceKind.SmokeAlarm));
    }

    private static Mend? Device(Finding finding, Job job, string act, DeviceKind kind, ServedPlace serves = ServedPlace.Room) => Room(finding, job) is { } room
        ? new Mend(act, $"{RoomActs.Name(room)}: one more {Symbols.DeviceSign.Of(kind).Name}", j => RoomActs.Add(j, room.Id, kind, serves))
        : null;

    private static Room? Room(Finding finding, Job job) => RoomActs.All(job).FirstOrDefault(r => finding.Where.Contains(r.Id));
}
