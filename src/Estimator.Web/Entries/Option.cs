using Estimator.Engine.House;
using Estimator.Web.Jobs;

namespace Estimator.Web.Entries;

/// <summary>One of the words to choose from.</summary>
/// <param name="Value">What it is called in the field; empty where nothing is stated.</param>
/// <param name="Words">What is shown.</param>
public sealed record Option(string Value, string Words)
{
    /// <summary>Yes.</summary>
    public const string Yes = "yes";

    /// <summary>No.</summary>
    public const string No = "no";

    /// <summary>Options of an enum, in its order.</summary>
    public static IReadOnlyList<Option> Of<T>(Func<T, string> words)
        where T : struct, Enum => [.. Enum.GetValues<T>().Select(v => new Option(v.ToString(), words(v)))];

    /// <summary>The same with a first option for what is taken where nothing is stated.</summary>
    public static IReadOnlyList<Option> Of<T>(string none, Func<T, string> words)
        where T : struct, Enum => [new Option("", none), .. Of(words)];

    /// <summary>Yes and no, and what is taken where nothing is stated.</summary>
    public static IReadOnlyList<Option> YesNo(string none) => [new("", none), new(Yes, "yes"), new(No, "no")];

    /// <summary>All rooms of a job, level by level.</summary>
    public static IReadOnlyList<Option> Rooms(Job job, string? none = null) =>
        [.. none is null ? Array.Empty<Option>() : [new Option("", none)], .. RoomActs.All(job).Select(r => new Option(r.Id, RoomActs.Name(r)))];

    /// <summary>The word for yes, no or nothing stated.</summary>
    public static string Of(bool? value) => value switch { true => Yes, false => No, null => "" };

    /// <summary>Yes, no or nothing stated.</summary>
    public static bool? YesNoOf(string value) => value switch { Yes => true, No => false, _ => null };

    /// <summary>A member of an enum, or null where nothing is stated.</summary>
    public static T? Member<T>(string value)
        where T : struct, Enum => Enum.TryParse<T>(value, out var member) ? member : null;
}
