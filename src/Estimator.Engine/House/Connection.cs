namespace Estimator.Engine.House;

/// <summary>How equipment meets its circuit.</summary>
public enum Connection
{
    /// <summary>By cord and plug, at a receptacle.</summary>
    Receptacle = 1,

    /// <summary>Hard-wired.</summary>
    HardWired,
}
