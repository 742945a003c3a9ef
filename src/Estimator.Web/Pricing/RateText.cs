using System.Globalization;
using System.Text.RegularExpressions;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.Web.Figures;

namespace Estimator.Web.Pricing;

/// <summary>Reads a rate as people type it: 22, 22 %, $1,250.50.</summary>
public static partial class RateText
{
    private const int Shown = 40;

    /// <summary>The number, or what is accepted. A comma stands between thousands only, so that 20,5 is not taken for 205.</summary>
    public static Parsed<decimal> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var bare = text.Trim();
        if (!Written().IsMatch(bare) || !decimal.TryParse(bare.Trim('$', '%', ' ').Replace(",", "", StringComparison.Ordinal), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
        {
            var found = bare.Length > Shown ? $"{bare[..Shown]}…" : bare;
            return Parsed<decimal>.Failure($"Found “{found}”; accepted is a number such as 22, 8.25 or 1,250.");
        }

        return number <= JobLimits.Number
            ? Parsed<decimal>.Success(number)
            : Parsed<decimal>.Failure($"Found {American.Number(number, 2)}; accepted is at most {American.Number(JobLimits.Number)}.");
    }

    [GeneratedRegex(@"^\$?\s?(\d{1,12}|\d{1,3}(,\d{3}){1,3})?(\.\d{1,6})?\s?%?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Written();
}
