namespace Estimator.Engine.Catalogue;

/// <summary>What a box is for.</summary>
public enum BoxUse
{
    /// <summary>Devices in a wall.</summary>
    Wall = 1,

    /// <summary>A luminaire or alarm on a ceiling, or a luminaire on a wall.</summary>
    Luminaire,

    /// <summary>A ceiling fan.</summary>
    Fan,

    /// <summary>Outdoors.</summary>
    Weatherproof,

    /// <summary>A 30 to 60 A receptacle or a junction for equipment.</summary>
    Appliance,

    /// <summary>None: the luminaire or fan brings its own wiring box.</summary>
    OwnHousing,
}
