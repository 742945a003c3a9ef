using System.Globalization;
using Estimator.Engine.Catalogue;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Learning;

/// <summary>Lays what the firm accepted over the tables.</summary>
public static class OwnUnits
{
    private const int Places = 4;
    private const string Cable = "cable";

    /// <summary>The catalogue with its hours multiplied, each saying so. The factor of a class stands in front of its phase's; the two are never multiplied together.</summary>
    /// <param name="catalogue">The catalogue.</param>
    /// <param name="own">The factors in force, one a phase and one a class in it at most.</param>
    public static PartsCatalogue Over(PartsCatalogue catalogue, IReadOnlyCollection<OwnUnit> own)
    {
        var factors = own.Where(o => o.Kind is LearnedKind.Hours).ToDictionary(o => o.Key, StringComparer.Ordinal);
        return factors.Count == 0 ? catalogue : catalogue.WithLabor([.. catalogue.LaborUnits.Select(Own)]);

        LaborUnit Own(LaborUnit unit) => (factors.GetValueOrDefault(ClassKey(catalogue, unit)) ?? factors.GetValueOrDefault(UnitKey.Of(unit.Phase))) is { } factor ? Times(unit, factor) : unit;
    }

    /// <summary>What a factor would make of each unit that it acts on, before anybody accepts it: the table's unit, then the own one, in the catalogue's order.</summary>
    /// <param name="catalogue">The catalogue as it is shipped.</param>
    /// <param name="factor">The factor.</param>
    public static IEnumerable<(LaborUnit Table, LaborUnit Own)> Preview(PartsCatalogue catalogue, OwnUnit factor) => catalogue.LaborUnits
        .Where(u => factor.Kind is LearnedKind.Hours && (factor.Key == UnitKey.Of(u.Phase) || factor.Key == ClassKey(catalogue, u))).Select(u => (u, Times(u, factor)));

    /// <summary>The text of labor.csv for a catalogue, so that a saved revision reads the same hours again.</summary>
    /// <param name="catalogue">The catalogue.</param>
    public static string LaborCsv(PartsCatalogue catalogue) => string.Join('\n', catalogue.LaborUnits.Select(u => string.Create(
        CultureInfo.InvariantCulture, $"{u.Item},{Words.Snake(u.Phase)},{u.Hours},{u.Per},\"{u.Basis.Replace("\"", "\"\"", StringComparison.Ordinal)}\"")).Prepend("item,phase,hours,per,basis").Append(""));

    /// <summary>
    /// How a new job buys: what the firm's jobs took beyond the takeoff is the tolerance of each piece of cable, and of other categories what is bought beyond the takeoff. It is written
    /// into the job, so that a saved revision is priced as it was.
    /// </summary>
    /// <param name="practice">How the job works.</param>
    /// <param name="own">The factors in force.</param>
    public static Practice Over(Practice practice, IEnumerable<OwnUnit> own) => own.Where(o => o.Kind is LearnedKind.Material).Aggregate(practice, (with, o) => Percent.FromHundredths(WastePercent(o.Factor)) switch
    {
        var waste when o.Key == Cable => with with { CutTolerancePercent = waste },
        var waste when IsSpared(o.Key) && waste.ToHundredths() > 0 => with with { SparePercents = with.SparePercents.SetItem(o.Key, waste) },
        _ => with,
    });

    /// <summary>Whether an accepted factor on the material of a category acts in new jobs.</summary>
    /// <param name="category">The category.</param>
    public static bool Acts(string category) => category == Cable || IsSpared(category);

    /// <summary>What a factor on material is as waste, in percent to the tenth; none below the takeoff, and no more than a job accepts.</summary>
    /// <param name="factor">The factor.</param>
    public static decimal WastePercent(decimal factor) => Math.Clamp(decimal.Round((factor - 1) * 100, 1, MidpointRounding.AwayFromZero), 0, 100);

    private static bool IsSpared(string category) => PracticeDefaults.SpareCategories.Contains(category);

    private static string ClassKey(PartsCatalogue catalogue, LaborUnit unit) => UnitKey.Of(UnitKey.Of(unit.Phase), LearningRules.ClassOf(catalogue.Find(unit.Item)?.Category ?? ""));

    private static LaborUnit Times(LaborUnit unit, OwnUnit factor) => unit with
    {
        Hours = decimal.Round(unit.Hours * factor.Factor, Places, MidpointRounding.AwayFromZero),
        Basis = string.Create(CultureInfo.InvariantCulture, $"own: {factor.Factor:0.00} times the table from {factor.Jobs} closed jobs; {unit.Basis}"),
    };
}
