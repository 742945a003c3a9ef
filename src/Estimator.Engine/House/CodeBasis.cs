using System.Collections.Immutable;

namespace Estimator.Engine.House;

/// <summary>The code that the job falls under.</summary>
public sealed record CodeBasis
{
    /// <summary>The edition of the NEC in force at the site.</summary>
    public CodeEdition Edition { get; init; } = CodeEdition.Nec2023;

    /// <summary>When the permit was or will be asked for; some rules turn on it.</summary>
    public DateOnly? PermitDate { get; init; }

    /// <summary>Local changes to the edition. A local amendment always wins.</summary>
    public ImmutableArray<Amendment> Amendments { get; init; } = [];
}
