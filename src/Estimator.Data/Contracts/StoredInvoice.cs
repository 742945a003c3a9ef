using System.Collections.Immutable;
using Estimator.Engine.Payments;

namespace Estimator.Data.Contracts;

/// <summary>An invoice as it is stored.</summary>
/// <param name="Number">Its number in the company.</param>
/// <param name="Issued">What it asks for, and what happened.</param>
/// <param name="Noted">Who noted each event, in their order.</param>
/// <param name="Who">Who wrote it.</param>
/// <param name="At">When, UTC.</param>
public sealed record StoredInvoice(int Number, IssuedInvoice Issued, ImmutableArray<string> Noted, string Who, DateTimeOffset At);
