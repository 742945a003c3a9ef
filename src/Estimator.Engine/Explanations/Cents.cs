namespace Estimator.Engine.Explanations;

/// <summary>Rounds money line by line, half away from zero, as a spreadsheet's ROUND does.</summary>
public static class Cents
{
    /// <summary>To the cent.</summary>
    public static Fact Round(PageWriter page, Fact dollars) => page.Compute(
        Operation.RoundNearest, "to-the-cent", "To the cent", Unit.Dollars, dollars,
        page.Compute(Operation.Quotient, "cent", "A cent", Unit.Dollars, page.Constant("One dollar", 1, Unit.Dollars), page.Constant("Cents", 100)));
}
