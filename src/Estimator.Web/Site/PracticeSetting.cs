using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Web.Entries;
using Estimator.Web.Explanations;

namespace Estimator.Web.Site;

/// <summary>One way in which a firm works: what is taken where it says nothing, where that was read, and its own value.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Default">What is taken where nothing is stated.</param>
/// <param name="Source">Where that was read, or that it has no source.</param>
/// <param name="Own">The firm's own value as it stands in its field; empty where none is stated.</param>
/// <param name="Set">The practice with what was typed, or what is wrong with it.</param>
public sealed record PracticeSetting(string Label, string Default, string Source, Func<Practice, string> Own, Func<string, Parsed<Func<Practice, Practice>>> Set)
{
    /// <summary>The words to choose from; empty where it is typed.</summary>
    public IReadOnlyList<Option> Options { get; init; } = [];

    /// <summary>Unit behind the field.</summary>
    public string? Unit { get; init; }

    /// <summary>A length, by default that of a row.</summary>
    public static PracticeSetting OfLength(RuleRow row, Func<Practice, Length?> own, Func<Practice, Length?, Practice> set, string? label = null) =>
        new(label ?? row.Label, row.Inches().ToString(), Cited(row), p => own(p)?.ToString() ?? "", Reads(Typed.Length, set));

    /// <summary>A number of outlets, by default that of a row.</summary>
    public static PracticeSetting OfCount(RuleRow row, Func<Practice, int?> own, Func<Practice, int?, Practice> set) =>
        new(row.Label, Typed.Of(row.Number()), Cited(row), p => Typed.Of(own(p)), Reads(text => Typed.Whole(text, "a whole number of outlets"), set));

    /// <summary>A share, by default that of a row.</summary>
    public static PracticeSetting OfPercent(RuleRow row, Func<Practice, Percent?> own, Func<Practice, Percent?, Practice> set) =>
        new(row.Label, $"{Typed.Of(row.Number())} %", Cited(row), p => Typed.Of(own(p)?.ToHundredths()), Reads(Typed.Percent, set)) { Unit = "%" };

    /// <summary>What is bought of a category beyond the takeoff, by default nothing.</summary>
    public static PracticeSetting OfSpare(string category, string label, string source) => new(
        label, "nothing", source, p => p.SparePercents.TryGetValue(category, out var own) ? Typed.Of(own.ToHundredths()) : "",
        Reads<Percent?>(Typed.Percent, (p, x) => p with { SparePercents = x is { } percent ? p.SparePercents.SetItem(category, percent) : p.SparePercents.Remove(category) }))
    { Unit = "%" };

    /// <summary>A choice.</summary>
    public static PracticeSetting OfChoice(string label, string none, string source, IReadOnlyList<Option> options, Func<Practice, string> own, Func<Practice, string, Practice> set) =>
        new(label, none, source, own, Reads(Parsed<string>.Success, set)) { Options = options };

    private static Func<string, Parsed<Func<Practice, Practice>>> Reads<T>(Func<string, Parsed<T>> read, Func<Practice, T, Practice> set) => text =>
        read(text) is { } parsed && parsed.Ok
            ? Parsed<Func<Practice, Practice>>.Success(p => set(p, parsed.Value))
            : Parsed<Func<Practice, Practice>>.Failure(read(text).Problem!);

    private static string Cited(RuleRow row) => Citation.Of($"{row.Table.Id}:{row.Key}").Sentence;
}
