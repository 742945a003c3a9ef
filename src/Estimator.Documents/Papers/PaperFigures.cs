using System.Globalization;

namespace Estimator.Documents.Papers;

/// <summary>Figures as people here read them; nothing is rounded that the engine did not round.</summary>
internal static class PaperFigures
{
    /// <summary>Dollars and cents.</summary>
    internal static string Dollars(decimal dollars) => dollars < 0 ? $"-{Dollars(-dollars)}" : string.Create(CultureInfo.InvariantCulture, $"${dollars:#,0.00}");

    /// <summary>A whole number.</summary>
    internal static string Whole(decimal number) => number.ToString("#,0", CultureInfo.InvariantCulture);

    /// <summary>A number with the decimals that it has, four at most.</summary>
    internal static string Plain(decimal number) => number.ToString("#,0.####", CultureInfo.InvariantCulture);

    /// <summary>Two decimals.</summary>
    internal static string Hundredths(decimal number) => number.ToString("#,0.00", CultureInfo.InvariantCulture);

    /// <summary>One decimal.</summary>
    internal static string Tenths(decimal number) => number.ToString("#,0.0", CultureInfo.InvariantCulture);
}
