using Estimator.Engine.Alternates;

namespace Estimator.Documents.Pricing;

/// <summary>An alternate, or a package of them, as it is offered.</summary>
/// <param name="Number">Its number; of a package the numbers of its alternates.</param>
/// <param name="Name">What the customer reads.</param>
/// <param name="Priced">What it does to the price; null where it can't be made.</param>
/// <param name="Problem">Why it can't be made.</param>
public sealed record OfferedAlternate(string Number, string Name, PricedAlternate? Priced, string Problem);
