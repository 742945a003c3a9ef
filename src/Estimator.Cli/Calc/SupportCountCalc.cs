using System.Text.Json.Nodes;
using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Engine.Takeoff;

namespace Estimator.Cli.Calc;

/// <summary>Fasteners of cable along framing.</summary>
internal static class SupportCountCalc
{
    internal static CalcTopic Topic { get; } = new(
        "support_count", "Fasteners of a cable run along framing, or whether stated distances are within the rule",
        """{"run_ft": 20, "first_from_box_in": [12, 12]}""",
        [
            CalcTopics.EditionField, new("run_ft", "number", "Length of the run."), new("first_from_box_in", "numbers", "First fastener from the box, at each end."),
            new("spacing_ft", "number", "Stated spacing, to be judged."), new("from_box_in", "number", "Stated distance from a box, to be judged."),
            new("from_small_box_in", "number", "Stated distance from a single-gang box without clamps, to be judged."), new("free_cable_in", "number", "Stated free cable at such a box, to be judged."),
        ],
        Run);

    private static JsonObject Run(CalcInput input)
    {
        if (!input.Has("run_ft"))
        {
            return new JsonObject
            {
                ["ok"] = Within(input, "spacing_ft", 12m, TakeoffRules.StapleSpacing) && Within(input, "from_box_in", 1m, TakeoffRules.StapleFromBox)
                    && Within(input, "from_small_box_in", 1m, TakeoffRules.StapleFromSmallBox) && Within(input, "free_cable_in", 1m, TakeoffRules.FreeCable),
            };
        }

        var ends = input.Numbers("first_from_box_in");
        if (ends.Length != 2)
        {
            throw input.Wrong("first_from_box_in", $"{ends.Length} numbers", "the distance at each end");
        }

        if (ends.Sum() > 12m * input.Number("run_ft"))
        {
            throw input.Wrong("first_from_box_in", $"{ends.Sum()} in together", $"distances within the run's {12m * input.Number("run_ft")} in");
        }

        Fact Inches(string field, decimal value) => input.Page.Given(field, field, Length.FromInches(value));
        return new JsonObject { ["fasteners"] = Support.Fasteners(input.Page, Inches("run", 12m * input.Number("run_ft")), Inches("first", ends[0]), Inches("last", ends[1])).Value };
    }

    private static bool Within(CalcInput input, string field, decimal inches, RuleRow most) => input.OptionalNumber(field) is not { } stated || stated * inches <= most.Number();
}
