using System.Collections.Immutable;
using Estimator.Engine.Contracts;

namespace Estimator.Data.Contracts;

/// <summary>A change order as it is stored.</summary>
/// <param name="Number">1 for the job's first.</param>
/// <param name="Order">What changes, and what happened.</param>
/// <param name="Noted">Who noted each event, in their order.</param>
/// <param name="Who">Who wrote it.</param>
/// <param name="At">When, UTC.</param>
public sealed record StoredChange(int Number, ChangeOrder Order, ImmutableArray<string> Noted, string Who, DateTimeOffset At);
