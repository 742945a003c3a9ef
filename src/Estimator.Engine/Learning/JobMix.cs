using System.Collections.Immutable;

namespace Estimator.Engine.Learning;

/// <summary>What one closed job says of a phase whose hours were written down as a whole.</summary>
/// <param name="JobId">The job.</param>
/// <param name="Estimated">Estimated hours by class, none of them below zero and together above it.</param>
/// <param name="Actual">What the phase took.</param>
public sealed record JobMix(string JobId, ImmutableArray<ClassHours> Estimated, decimal Actual)
{
    /// <summary>Estimated hours of the phase.</summary>
    public decimal All => Estimated.Sum(c => c.Hours);

    /// <summary>Estimated hours of a class.</summary>
    /// <param name="of">The class.</param>
    public decimal Of(string of) => Estimated.Where(c => c.Class == of).Sum(c => c.Hours);
}
