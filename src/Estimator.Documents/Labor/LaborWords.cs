using System.Collections.Immutable;
using System.Globalization;
using Estimator.Engine.Rules;

namespace Estimator.Documents.Labor;

/// <summary>Factors in words.</summary>
public static class LaborWords
{
    /// <summary>The factors of a line, each with its figure; empty where there is none.</summary>
    public static string Of(ImmutableArray<RuleRow> factors) =>
        string.Join("; ", factors.Select(f => string.Create(CultureInfo.InvariantCulture, $"{f.Label} {f.Number():0.##}")));
}
