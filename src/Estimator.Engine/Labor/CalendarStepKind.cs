namespace Estimator.Engine.Labor;

/// <summary>What happens in a stretch of the calendar.</summary>
public enum CalendarStepKind
{
    /// <summary>The crew works.</summary>
    Work = 1,

    /// <summary>The crew waits for an inspection.</summary>
    Inspection,

    /// <summary>The site waits for the utility.</summary>
    Utility,
}
