using System.Globalization;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Web.Figures;

namespace Estimator.Web.Pricing;

/// <summary>A rate of the bid that the user may state for the job; left empty it follows the bid table.</summary>
/// <param name="Field">Its field in the job file.</param>
/// <param name="Title">What it is.</param>
/// <param name="Unit">Unit behind the number.</param>
/// <param name="Read">Reads it.</param>
/// <param name="Write">Writes it; null takes it away.</param>
/// <param name="Default">The row that holds where nothing is stated; null where that means nothing.</param>
/// <param name="Whole">Whether only whole numbers make sense.</param>
public sealed record RateSetting(
    string Field, string Title, string Unit, Func<BidSettings, decimal?> Read, Func<BidSettings, decimal?, BidSettings> Write, RuleRow? Default, bool Whole = false)
{
    /// <summary>An empty field means nothing.</summary>
    public const string None = "none.";

    /// <summary>What an empty field means where no row stands behind it.</summary>
    public string Empty { get; init; } = None;

    /// <summary>What holds where the field is empty, and on what that rests.</summary>
    public string Help => Default is not { } row
        ? $"Left empty: {Empty}"
        : $"Left empty: {American.Number(row.Number(), 2)} ({(row.Basis is "published" ? string.Join(", ", new[] { row.Source.Title, row.Source.Edition }.Where(s => s.Length > 0)) : row.Basis)}).";

    /// <summary>The stated number as it stands in its field; empty where none is stated.</summary>
    public string Text(BidSettings bid) => Read(bid) is { } value ? value.ToString("0.####", CultureInfo.InvariantCulture) : "";

    /// <summary>The change that a typed text makes, or what is wrong with it in the engine's own words.</summary>
    public Parsed<Func<Job, Job>> Change(Job job, string text) => StatedNumber.Change(job, text, $"$.bid.{Field}", Whole ? Unit : null, (j, v) => j with { Bid = Write(j.Bid, v) });

    /// <summary>What the log says of it.</summary>
    public string Words(string text) => text.Trim().Length == 0 ? $"{Title}: as the bid table has it" : $"{Title}: {text.Trim().Trim('$', '%', ' ')} {Unit}";
}
