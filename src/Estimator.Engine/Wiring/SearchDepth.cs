namespace Estimator.Engine.Wiring;

/// <summary>How long the engine looks for a better plan. Both depths are bounded by counted passes, never by a clock.</summary>
public enum SearchDepth
{
    /// <summary>While a job is edited: the price in sight is provisional.</summary>
    Quick = 1,

    /// <summary>For a saved revision and every document.</summary>
    Thorough,
}
