using System.Text.Json.Nodes;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Cli.Calc;

/// <summary>Receptacles that walls, counters, islands, halls and other places need.</summary>
internal static class ReceptacleCountCalc
{
    internal static CalcTopic Topic { get; } = new(
        "receptacle_count", "Receptacles at least, by wall spaces, counters, islands, hallways, garage bays or basement portions",
        """{"wall_spaces_ft": [12, 12.1]}""",
        [
            CalcTopics.EditionField, new("room_ft", "numbers", "Width and depth of a room; its walls less the openings are one space."), new("openings_ft", "numbers", "Widths of doorways of that room."),
            new("wall_spaces_ft", "numbers", "Wall spaces."), new("counters_in", "numbers", "Straight pieces of wall counter."), new("islands_sqft", "numbers", "Islands and peninsulas by area."),
            new("hallways_ft", "numbers", "Hallways on their centre line."), CalcField.Count("garage_bays", "Vehicle bays."), CalcField.Count("basement_portions", "Unfinished basement portions."),
            new("one_family", "flag", "Whether it is a one-family dwelling: outdoors and laundry are then answered."),
        ],
        Run);

    private static JsonObject Run(CalcInput input)
    {
        var answer = new JsonObject();
        if (input.Numbers("room_ft") is { Length: > 0 } room)
        {
            if (room.Length != 2)
            {
                throw input.Wrong("room_ft", $"{room.Length} numbers", "width and depth");
            }

            var round = 2 * (room[0] + room[1]);
            var wall = round - input.Numbers("openings_ft").Sum();
            if (wall < 0)
            {
                throw input.Wrong("openings_ft", $"{round - wall} ft together", $"openings to {round} ft, the walls of the room");
            }

            answer["wall_ft"] = wall;
            answer["count"] = ReceptacleCounts.WallSpace(Length.FromFeet(wall));
        }

        Each(input, answer, "wall_spaces_ft", "wall_spaces", f => ReceptacleCounts.WallSpace(Length.FromFeet(f)));
        Each(input, answer, "counters_in", "counters", i => ReceptacleCounts.Counter(Length.FromInches(i)));
        Each(input, answer, "hallways_ft", "hallways", f => ReceptacleCounts.Hallway(Length.FromFeet(f)));
        Each(input, answer, "islands_sqft", "islands", a => Island(input, a));
        if (input.Has("garage_bays"))
        {
            answer["garage"] = input.Whole("garage_bays") * ReceptacleRules.GarageBay.Number();
        }

        if (input.Has("basement_portions"))
        {
            answer["basement"] = input.Whole("basement_portions") * ReceptacleRules.BasementPortion.Number();
        }

        if (input.Flag("one_family"))
        {
            (answer["outdoor_min"], answer["laundry_min"]) = (ReceptacleRules.Outdoor.Number(), ReceptacleRules.Laundry.Number());
        }

        return answer;
    }

    // By area only 2020 asks; 2017 goes by the sides, of which an area tells that one receptacle is due where both can be long enough.
    private static int Island(CalcInput input, decimal area) => (CodeEdition)input.Year switch
    {
        CodeEdition.Nec2020 => ReceptacleCounts.IslandByArea(area),
        CodeEdition.Nec2017 => area >= ReceptacleRules.IslandLong2017.Number() * ReceptacleRules.IslandWide2017.Number() / 144m ? 1 : 0,
        _ => 0,
    };

    private static void Each(CalcInput input, JsonObject answer, string field, string name, Func<decimal, int> count)
    {
        if (input.Has(field))
        {
            answer[name] = Answers.OneOrList(input.IsList(field), input.Numbers(field).Select(v => (decimal)count(v)));
        }
    }
}
