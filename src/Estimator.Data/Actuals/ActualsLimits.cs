namespace Estimator.Data.Actuals;

/// <summary>How large what is written down of a job may be.</summary>
public static class ActualsLimits
{
    /// <summary>Most hours of one entry: a crew's long week.</summary>
    public const int Hours = 1000;

    /// <summary>Longest note, in characters.</summary>
    public const int Note = 400;

    /// <summary>Most of a material.</summary>
    public const int Quantity = 1_000_000;

    /// <summary>Longest key of a phase or category, in characters.</summary>
    public const int Key = 60;
}
