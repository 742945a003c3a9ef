using Estimator.Engine.Catalogue;

namespace Estimator.Engine.Purchase;

/// <summary>So many packs of an offer.</summary>
/// <param name="Offer">The offer.</param>
/// <param name="Count">How many.</param>
public sealed record PackCount(Offer Offer, int Count);
