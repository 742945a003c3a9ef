using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Estimator.Engine.Explanations;
using Estimator.Engine.Loads;
using Estimator.Engine.Rules;

namespace Estimator.Cli.Calc;

/// <summary>Demand of cooking appliances and dryers.</summary>
internal static class RangeDemandCalc
{
    internal static CalcTopic Topic { get; } = new(
        "range_demand", "Demand of ranges, ovens, cooktops or dryers",
        """{"ranges_kw": [14]}""",
        [
            CalcTopics.EditionField, new("ranges_kw", "numbers", "Ratings of ranges."), new("ovens_kw", "numbers", "Ratings of wall ovens."), new("cooktops_kw", "numbers", "Ratings of cooktops."),
            new("dryers_kva", "numbers", "Ratings of dryers."), new("one_branch_circuit", "flag", "One cooktop and up to two ovens on one branch circuit in one room."),
            new("note_3", "flag", "Columns A and B for each group, beside column C."), CalcField.Volts("volts", "Voltage, 240 where left out."),
        ],
        Run);

    private static JsonObject Run(CalcInput input)
    {
        if (input.Has("dryers_kva"))
        {
            var dryers = Va(input, "dryers_kva");
            return new JsonObject { ["kva"] = Kilo(DryerDemand.Of(input.Page, dryers)), ["factor_percent"] = DemandTables.Dryers(Math.Max(1, dryers.Length)).Number("percent") };
        }

        var all = Va(input, "ranges_kw").Concat(Va(input, "cooktops_kw")).Concat(Va(input, "ovens_kw")).ToImmutableArray();
        if (all.IsEmpty)
        {
            throw input.Wrong("ranges_kw", "no appliance", "ratings in ranges_kw, ovens_kw, cooktops_kw or dryers_kva");
        }

        return input.Flag("one_branch_circuit") ? AsOne(input, all) : input.Flag("note_3") ? NoteThree(input, all) : Feeder(input, all);
    }

    private static JsonObject Feeder(CalcInput input, ImmutableArray<Fact> all) =>
        new() { ["kw"] = Kilo(CookingDemand.Of(input.Page, all)), ["base_kw"] = Kilo(CookingDemand.ColumnCBase(input.Page, all.Length)) };

    // One cooktop with its ovens counts as one range of their sum, note 4.
    private static JsonObject AsOne(CalcInput input, ImmutableArray<Fact> all)
    {
        var sum = input.Page.Sum("cooking-as-one", "As one range", Unit.VoltAmperes, all);
        var demand = CookingDemand.Of(input.Page, [sum]);
        return new JsonObject { ["as_one_range_kw"] = Kilo(sum), ["kw"] = Kilo(demand), ["amperes"] = demand.Value / (input.OptionalNumber("volts") ?? 240m) };
    }

    private static JsonObject NoteThree(CalcInput input, ImmutableArray<Fact> all)
    {
        var from = LoadRules.CookingBFrom.Number() * 1000m;
        decimal Column(Func<Fact, bool> group) => all.Where(group).ToList() is { Count: > 0 } some ? CookingDemand.ByNoteThree(input.Page, some).Sum(f => f.Value) / 1000m : 0;
        var (a, b) = (Column(f => f.Value < from), Column(f => f.Value >= from));
        return new JsonObject { ["column_a_kw"] = a, ["column_b_kw"] = b, ["kw"] = a + b, ["column_c_kw"] = Kilo(CookingDemand.ColumnCBase(input.Page, all.Length)) };
    }

    private static ImmutableArray<Fact> Va(CalcInput input, string field) => [.. input.Numbers(field).Select(k => input.Given(field, k * 1000m, Unit.VoltAmperes))];

    private static decimal Kilo(Fact va) => va.Value / 1000m;
}
