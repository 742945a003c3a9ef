namespace Estimator.Engine.Explanations;

/// <summary>Rounds money line by line, half away from zero, as a spreadsheet's ROUND does.</summary>
public static class Cents
{
    /// <summary>To the cent.</summary>
    /// <param name="page">Where it is written.</param>
    /// <param name="dollars">What is rounded.</param>
    /// <param name="label">What it is then.</param>
    public static Fact Round(PageWriter page, Fact dollars, string label = "To the cent") => page.Compute(
        Operation.RoundNearest, "to-the-cent", label, Unit.Dollars, dollars,
        page.Compute(Operation.Quotient, "cent", "A cent", Unit.Dollars, page.Constant("One dollar", 1, Unit.Dollars), page.Constant("Cents", 100)));
}
