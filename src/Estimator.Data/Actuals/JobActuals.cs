using System.Collections.Immutable;
using Estimator.Engine.Learning;

namespace Estimator.Data.Actuals;

/// <summary>What was written down of a job.</summary>
/// <param name="Hours">Hours that were worked, by day.</param>
/// <param name="Material">Material that was used, by item.</param>
/// <param name="ClosedOn">The day on which the job was closed; null while it is open.</param>
public sealed record JobActuals(ImmutableArray<ActualHours> Hours, ImmutableArray<UsedMaterial> Material, DateOnly? ClosedOn);
