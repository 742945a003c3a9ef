using System.Globalization;
using Estimator.Engine.Contracts;

namespace Estimator.Documents.Contracts;

/// <summary>What a change order says.</summary>
public static class ChangeWords
{
    /// <summary>That nothing is done before it is signed.</summary>
    public const string Signed = "The work of a change starts when both have signed. All else in the contract stands. Some states ask for written change orders by law.";

    /// <summary>What a line does.</summary>
    /// <param name="kind">The kind.</param>
    public static string Of(ChangeLineKind kind) => kind switch
    {
        ChangeLineKind.Added => "Added",
        ChangeLineKind.Removal => "Taken out",
        _ => "Left out",
    };

    /// <summary>How many of it; empty where it has no count.</summary>
    /// <param name="line">The line.</param>
    public static string Quantity(ChangeLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.Quantity == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{line.Quantity:#,0.#} {(line.Unit is "foot" ? "ft" : line.Unit is "hour" ? "h" : "ea")}");
    }

    /// <summary>Working days that it adds, in words.</summary>
    /// <param name="days">How many.</param>
    public static string Days(int days) => days switch
    {
        0 => "none",
        1 => "1 working day",
        _ => string.Create(CultureInfo.InvariantCulture, $"{days} working days"),
    };
}
