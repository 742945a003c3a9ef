using System.Collections.Immutable;
using Estimator.Engine;
using Estimator.Engine.Alternates;
using Estimator.Engine.Catalogue;

namespace Estimator.Documents.Pricing;

/// <summary>What a customer is offered beside the price: alternates, packages of them, and unit prices for later adds. Each is a whole estimate of its own.</summary>
/// <param name="Alternates">The alternates, in the order of the job.</param>
/// <param name="Packages">The packages.</param>
/// <param name="UnitPrices">Unit prices for later adds.</param>
public sealed record CustomerOffer(ImmutableArray<OfferedAlternate> Alternates, ImmutableArray<OfferedAlternate> Packages, ImmutableArray<UnitPrice> UnitPrices)
{
    /// <summary>Nothing beside the price.</summary>
    public static CustomerOffer None { get; } = new([], [], []);

    /// <summary>The offer of an estimate. Takes as long as a dozen estimates.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="catalogue">The catalogue that it was made with.</param>
    public static CustomerOffer Of(JobEstimate estimate, PartsCatalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        var job = estimate.House.Job;
        OfferedAlternate Offered(string number, string name, IReadOnlyCollection<string> ids)
        {
            var priced = AlternatePricing.For(estimate, ids, catalogue);
            return new OfferedAlternate(number, name, priced.Ok ? priced.Value : null, priced.Ok ? "" : priced.Problem);
        }

        var numbers = job.Alternates.Select((a, i) => (a.Id, Number: FormattableString.Invariant($"{i + 1}"))).ToDictionary(x => x.Id, x => x.Number, StringComparer.Ordinal);
        return new CustomerOffer(
            [.. job.Alternates.Select(a => Offered(numbers[a.Id], a.Name, [a.Id]))],
            [.. job.AlternatePackages.Select(p => Offered(string.Join(", ", p.Alternates.Where(numbers.ContainsKey).Select(a => numbers[a])), p.Name, p.Alternates))],
            UnitPricing.For(estimate, catalogue));
    }
}
