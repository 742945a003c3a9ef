using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;

namespace Estimator.Web.Figures;

/// <summary>A figure as it is shown: the number, and the unit that stands small and grey behind it.</summary>
/// <param name="Number">The number; money carries its sign, feet and inches their marks.</param>
/// <param name="Suffix">The unit; empty where the number says it.</param>
public readonly record struct FigureText(string Number, string Suffix)
{
    /// <summary>Number and unit together.</summary>
    public override string ToString() => Suffix.Length == 0 ? Number : $"{Number} {Suffix}";

    /// <summary>How a value of a unit is shown.</summary>
    public static FigureText Of(decimal value, Unit unit, FigureForm form = FigureForm.Table) => unit switch
    {
        Unit.Dollars => new FigureText(form switch { FigureForm.Whole => American.WholeDollars(value), FigureForm.Full => FullDollars(value), _ => American.Dollars(value) }, ""),
        Unit.Length => new FigureText(Length.FromNanometres(decimal.ToInt64(decimal.Round(value, 0, MidpointRounding.AwayFromZero))).ToString(), ""),
        Unit.Each => new FigureText(American.Number(value, Digits(form, 2)), ""),
        Unit.Factor => new FigureText(American.Number(value, Digits(form, 3)), ""),
        Unit.Feet => new FigureText(American.Number(value, Digits(form, 1)), "ft"),
        Unit.SquareFeet => new FigureText(American.Number(value, Digits(form, 0)), "sq ft"),
        Unit.CubicInches => new FigureText(American.Number(value, Digits(form, 2)), "cu in"),
        Unit.Hours => new FigureText(form is FigureForm.Table or FigureForm.Exact ? American.Fixed(value, Digits(form, 1)) : American.Number(value, Digits(form, 1)), "h"),
        Unit.Amperes => new FigureText(American.Number(value, Digits(form, 1)), "A"),
        Unit.VoltAmperes => new FigureText(American.Number(value, Digits(form, 0)), "VA"),
        Unit.Volts => new FigureText(American.Number(value, Digits(form, 2)), "V"),
        Unit.Ohms => new FigureText(American.Number(value, form is FigureForm.Full ? 6 : 4), "ohm"),
        Unit.Percent => new FigureText(American.Number(value, Digits(form, 1)), "%"),
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "No such unit."),
    };

    /// <summary>How a fact is shown.</summary>
    public static FigureText Of(Fact fact, FigureForm form = FigureForm.Table) => Of(fact.Value, fact.Unit, form);

    private static int Digits(FigureForm form, int table) => form switch { FigureForm.Whole => 0, FigureForm.Exact => 2, FigureForm.Full => 4, _ => table };

    private static string FullDollars(decimal value) =>
        value == decimal.Round(value, 2, MidpointRounding.AwayFromZero) ? American.Dollars(value) : (value < 0 ? "\u2212" : "") + Math.Abs(value).ToString("$#,0.00##", American.Culture);
}
