namespace Estimator.Engine.House;

/// <summary>What a fixture is.</summary>
public enum FixtureKind
{
    /// <summary>Sink or basin.</summary>
    Sink = 1,

    /// <summary>Bathtub.</summary>
    Bathtub,

    /// <summary>Shower.</summary>
    Shower,

    /// <summary>Toilet.</summary>
    Toilet,

    /// <summary>Kitchen counter or appliance unit.</summary>
    Kitchen,

    /// <summary>Stairs.</summary>
    Stairs,
}
