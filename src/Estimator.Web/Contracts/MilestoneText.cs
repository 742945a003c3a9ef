using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Web.Catalogues;

namespace Estimator.Web.Contracts;

/// <summary>Reads and writes milestones as people type them: one a line, its share at the end, such as <c>Rough inspection passed 60%</c>.</summary>
internal static partial class MilestoneText
{
    private const int All = 100;

    internal static string Of(PaymentTerms? terms) =>
        string.Join('\n', (terms ?? new PaymentTerms()).Milestones.Select(m => $"{m.Name} {m.SharePercent.ToHundredths().ToString("0.####", CultureInfo.InvariantCulture)}%"));

    internal static Parsed<ImmutableArray<Milestone>> Read(string text)
    {
        var milestones = ImmutableArray.CreateBuilder<Milestone>();
        foreach (var line in text.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (Line().Match(line) is not { Success: true } read)
            {
                return Parsed<ImmutableArray<Milestone>>.Failure($"Found “{PriceText.Short(line)}”; a name and its share are accepted, such as: Rough inspection passed 60%.");
            }

            milestones.Add(new Milestone { Id = string.Create(CultureInfo.InvariantCulture, $"M{milestones.Count + 1}"), Name = read.Groups["name"].Value, SharePercent = Percent.FromHundredths(decimal.Parse(read.Groups["share"].Value, CultureInfo.InvariantCulture)) });
        }

        var sum = milestones.Sum(m => m.SharePercent.ToHundredths());
        return milestones.Count == 0 || sum == All
            ? Parsed<ImmutableArray<Milestone>>.Success(milestones.ToImmutable())
            : Parsed<ImmutableArray<Milestone>>.Failure(string.Create(CultureInfo.InvariantCulture, $"Found {sum:0.####}% in all; shares that add up to {All}% are accepted."));
    }

    [GeneratedRegex(@"^(?<name>.*\S)[\s,:]+(?<share>\d{1,3}(\.\d{1,4})?)\s?%?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Line();
}
