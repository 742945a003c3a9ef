using System.Collections.Immutable;
using Estimator.Engine.Catalogue;

namespace Estimator.Web.Catalogues;

/// <summary>A catalogue and the files that it was read from, which a saved revision keeps.</summary>
/// <param name="Parts">The catalogue.</param>
/// <param name="Files">File name to CSV text.</param>
public sealed record PricedCatalogue(PartsCatalogue Parts, ImmutableSortedDictionary<string, string> Files);
