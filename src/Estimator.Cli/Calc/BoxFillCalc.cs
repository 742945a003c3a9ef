using System.Text.Json.Nodes;
using Estimator.Engine.House;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;

namespace Estimator.Cli.Calc;

/// <summary>Box fill: what contents ask for, what a box holds, which box serves.</summary>
internal static class BoxFillCalc
{
    internal static CalcTopic Topic { get; } = new(
        "box_fill", "Volume that the contents of a box ask for, conductors a metal box holds, or the smallest metal box",
        """{"conductors": {"12": 4}, "grounds": {"12": 2}, "yokes": [{"size": "12"}], "internal_clamps": true, "box_volume_in3": 20.3}""",
        [
            CalcTopics.EditionField,
            new("conductors", "sizes", "Insulated conductors that enter, by size."), new("grounds", "sizes", "Equipment grounding conductors, by size."),
            new("isolated_grounds", "sizes", "Isolated grounding conductors, by size."), new("pigtails", "sizes", "Pigtails that never leave the box: not counted."),
            new("yokes", "objects", "Yokes: size of the largest conductor on it, and gangs of the device.") { Of = [new("size", "text", "Wire size."), new("gangs", "whole", "Gangs, 1 where left out.", 1m, 10m)] }, new("internal_clamps", "flag", "Whether clamps take room inside."),
            CalcField.Count("studs", "Luminaire studs."), CalcField.Count("hickeys", "Hickeys."), new("terminal_blocks", "texts", "Terminal blocks, by the largest conductor on each."),
            new("box_volume_in3", "number", "Volume of the box."), new("boxes", "texts", "Metal boxes by trade size and type: how many conductors of size each holds."),
            new("size", "text", "Size of those conductors."), new("box_type", "text", "Type whose smallest box is wanted: square, octagonal, device."),
            new("trade_width", "text", "First trade dimension of that box, such as 4."),
        ],
        Run);

    private static JsonObject Run(CalcInput input) =>
        input.Has("boxes") ? MostConductors(input) : input.Has("box_type") ? SmallestBox(input) : Fill(input);

    private static JsonObject Fill(CalcInput input)
    {
        var contents = Contents(input);
        var required = BoxFill.Required(input.Page, (CodeEdition)input.Year, contents).Value;
        var answer = new JsonObject { ["required_in3"] = required, ["edition"] = $"NEC-{input.Year}", ["required_2017_in3"] = BoxFill.Required(input.Page, CodeEdition.Nec2017, contents).Value };
        if (input.OptionalNumber("box_volume_in3") is { } volume)
        {
            answer["fits"] = required <= volume;
        }

        return answer;
    }

    private static BoxContents Contents(CalcInput input) => new()
    {
        Conductors = input.Counts("conductors"),
        Grounds = input.Counts("grounds"),
        IsolatedGrounds = input.Counts("isolated_grounds"),
        Yokes = [.. input.Objects("yokes").Select(y => (y.Size("size"), y.Has("gangs") ? y.Whole("gangs") : 1))],
        TerminalBlocks = input.Sizes("terminal_blocks"),
        InternalClamps = input.Flag("internal_clamps"),
        LuminaireStuds = input.Has("studs") ? input.Whole("studs") : 0,
        Hickeys = input.Has("hickeys") ? input.Whole("hickeys") : 0,
    };

    // The volume decides, not the printed count: the two differ for one box.
    private static JsonObject MostConductors(CalcInput input)
    {
        var each = BoxAllowances.For(input.Size("size")).Number(BoxAllowances.CubicInches);
        var counts = input.Texts("boxes").Select(name => BoxVolumes.Find(name) is { } box
            ? (int)decimal.Floor(box.Number(BoxAllowances.CubicInches) / each)
            : throw input.Wrong("boxes", $"'{name}'", $"one of {string.Join("; ", BoxVolumes.All.Select(b => b.Key))}"));
        return new JsonObject { ["most_conductors"] = Answers.OneOrList(input.IsList("boxes"), counts.Select(c => (decimal)c)) };
    }

    private static JsonObject SmallestBox(CalcInput input)
    {
        var required = BoxFill.Required(input.Page, (CodeEdition)input.Year, Contents(input)).Value;
        var type = input.Text("box_type");
        var width = input.OptionalText("trade_width");
        var box = BoxVolumes.All.Where(b => b.Text("box_type").Split('/').Contains(type) && (width is null || b.Text("trade_size_in").StartsWith($"{width} x", StringComparison.Ordinal)))
            .OrderBy(b => b.Number(BoxAllowances.CubicInches)).FirstOrDefault(b => b.Number(BoxAllowances.CubicInches) >= required);
        var answer = new JsonObject { ["required_in3"] = required, ["box"] = box is null ? null : $"{box.Text("trade_size_in")} {type}", ["volume_in3"] = box?.Number(BoxAllowances.CubicInches) };
        foreach (var (size, _) in input.Counts("conductors"))
        {
            answer[$"most_{size}"] = box is null ? null : decimal.Floor(box.Number(BoxAllowances.CubicInches) / BoxAllowances.For(size).Number(BoxAllowances.CubicInches));
        }

        return answer;
    }
}
