using System.Collections.Immutable;
using Estimator.Engine;

namespace Estimator.Data.Revisions;

/// <summary>What is saved as a revision.</summary>
/// <param name="JobVersion">Version of the stored job that the estimate was made from.</param>
/// <param name="Estimate">The estimate of that job.</param>
/// <param name="CatalogueFiles">The catalogue that it was made with, file name to CSV text; it is kept, so that the price can be made again.</param>
/// <param name="Note">What the user wants to remember of it.</param>
/// <param name="Who">Who saves it.</param>
public sealed record NewRevision(int JobVersion, JobEstimate Estimate, ImmutableSortedDictionary<string, string> CatalogueFiles, string Note, string Who);
