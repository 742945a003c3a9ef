using Estimator.Engine.Explanations;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Layout;

/// <summary>How high boxes are mounted: as the user said, by the firm's habit, else by the practice table.</summary>
/// <remarks>Source: common practice, no source; the tables name what was read.</remarks>
internal static class MountingHeights
{
    /// <summary>Height of a device on a wall, under the ceiling of its room.</summary>
    internal static Fact Of(Job job, FramedRoom room, DeviceKind kind, ServedPlace serves, PageWriter page) =>
        kind.HangsFromCeiling()
            ? page.Compute(Operation.Difference, "high-on-wall", "Box centre above the floor", Unit.Length, room.CeilingHeight, PracticeDefaults.HighOnWall.ReadInches(page))
            : Within(room, Usual(job, room.Source.Kind, kind, serves, page), page);

    /// <summary>A usual height, brought down where the room is too low for it, as in a crawl space.</summary>
    internal static Fact Within(FramedRoom room, Fact height, PageWriter page)
    {
        if (height.Value <= room.CeilingHeight.Value - PracticeDefaults.BelowCeiling.Inches().ToNanometres())
        {
            return height;
        }

        var most = page.Compute(Operation.Difference, "highest-box", "Highest box in the room", Unit.Length, room.CeilingHeight, PracticeDefaults.BelowCeiling.ReadInches(page));
        return page.Compute(Operation.Minimum, "height-in-low-room", "Box centre above the floor", Unit.Length, height, most);
    }

    private static Fact Usual(Job job, RoomKind room, DeviceKind kind, ServedPlace serves, PageWriter page) => (kind, serves, room) switch
    {
        _ when kind.IsSwitch() => Own(page, job.Practice.SwitchHeight, "$.practice.switch_height", PracticeDefaults.SwitchHeight),
        (DeviceKind.WallLight, ServedPlace.Basin, _) => PracticeDefaults.VanityLightHeight.ReadInches(page),
        (DeviceKind.WallLight, _, _) => PracticeDefaults.WallLightHeight.ReadInches(page),
        (DeviceKind.Receptacle240V, _, _) => EquipmentDefaults.For(EquipmentKind.Dryer).ReadInches(page, "height_in"),
        (_, ServedPlace.Counter or ServedPlace.Island, _) => PracticeDefaults.CounterHeight.ReadInches(page),
        (_, ServedPlace.Basin, _) => PracticeDefaults.BasinHeight.ReadInches(page),
        (_, ServedPlace.Outdoors, _) or (_, _, RoomKind.Outdoors) => PracticeDefaults.OutdoorReceptacleHeight.ReadInches(page),
        (_, _, RoomKind.Laundry or RoomKind.Utility) => PracticeDefaults.LaundryHeight.ReadInches(page),
        (_, _, RoomKind.Garage) => PracticeDefaults.GarageHeight.ReadInches(page),
        _ => Own(page, job.Practice.ReceptacleHeight, "$.practice.receptacle_height", PracticeDefaults.ReceptacleHeight),
    };

    private static Fact Own(PageWriter page, Length? own, string path, RuleRow row) =>
        own is { } height ? page.Given(path, row.Label, height) : row.ReadInches(page);
}
