using Estimator.Engine.Loads;

namespace Estimator.Documents.Loads;

/// <summary>Trade words for the methods of a dwelling load calculation.</summary>
public static class LoadWords
{
    /// <summary>What a method is called.</summary>
    public static string Of(LoadWorksheet sheet) => sheet.Method switch
    {
        "standard" => "Standard method",
        "optional" => "Optional method",
        "existing" => "Existing dwelling",
        "measured" => "Measured demand",
        "feeder" => "Feeder",
        _ => sheet.Method,
    };

    /// <summary>The lines that say something: of what is not there no line is shown, totals always are.</summary>
    public static IEnumerable<LoadLine> Shown(LoadWorksheet sheet) => sheet.Lines.Where(l => l.Value.Value != 0 || IsTotal(l));

    /// <summary>Whether a line is one of the results.</summary>
    public static bool IsTotal(LoadLine line) => line.Id is "total_va" or "exact_amperes" or "amperes";

    /// <summary>The worksheet that decides: a measured demand outranks what is calculated, else the lowest that applies.</summary>
    public static LoadWorksheet? Decisive(IReadOnlyList<LoadWorksheet> sheets) => sheets.FirstOrDefault(s => s.Method == "measured") ?? sheets.MinBy(s => s.Amperes.Value);
}
