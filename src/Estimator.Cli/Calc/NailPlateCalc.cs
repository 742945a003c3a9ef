using System.Text.Json.Nodes;
using Estimator.Engine.Rules;

namespace Estimator.Cli.Calc;

/// <summary>Whether a bored hole needs a steel plate.</summary>
/// <remarks>Edge of a centred hole = (depth - hole) / 2. Source: NEC 300.4(A)(1).</remarks>
internal static class NailPlateCalc
{
    internal static CalcTopic Topic { get; } = new(
        "nail_plate", "Edge distance of a bored hole, and whether it needs a plate",
        """{"member_depth_in": 3.5, "hole_in": 0.75}""",
        [CalcTopics.EditionField, new("member_depth_in", "number", "Depth of the member."), new("hole_in", "number", "Diameter of the hole."), new("offset_in", "number", "How far the hole's middle is off the member's.")],
        input =>
        {
            var (depth, hole) = (input.Number("member_depth_in"), input.Number("hole_in"));
            if (hole >= depth)
            {
                throw input.Wrong("hole_in", $"{hole} in", $"a hole smaller than the member's {depth} in");
            }

            var edge = (depth - hole) / 2m - (input.OptionalNumber("offset_in") ?? 0);
            if (edge < 0)
            {
                throw input.Wrong("offset_in", $"{input.Number("offset_in")} in", $"an offset to {(depth - hole) / 2m} in, where the hole stays in the member");
            }

            return new JsonObject { ["edge_in"] = edge, ["plate"] = edge < TakeoffRules.EdgeDistance.Number() };
        });
}
