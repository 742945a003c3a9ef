using System.Collections.Immutable;
using Estimator.Engine.Payments;

namespace Estimator.Data.Contracts;

/// <summary>What a bid offered when it was sent first.</summary>
/// <param name="Revision">The revision.</param>
/// <param name="Lines">Its schedule of values.</param>
/// <param name="Terms">Terms of payment.</param>
/// <param name="ValidDays">How long it stands, in days.</param>
public sealed record SentBid(int Revision, ImmutableArray<ContractLine> Lines, ContractTerms Terms, int ValidDays);
