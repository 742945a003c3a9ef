namespace Estimator.Engine.House;

/// <summary>What a sentence of a bid's scope says.</summary>
public enum ScopePart
{
    /// <summary>The price takes it in.</summary>
    Included = 1,

    /// <summary>The price leaves it out.</summary>
    Excluded,

    /// <summary>The price rests on it.</summary>
    Assumed,
}
