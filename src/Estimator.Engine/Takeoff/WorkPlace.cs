using Estimator.Engine.House;

namespace Estimator.Engine.Takeoff;

/// <summary>What labor turns on where a device is set or a cable is pulled.</summary>
/// <param name="Fished">Whether its box is cut into a finished wall, or the cable is fished.</param>
/// <param name="Build">What the walls are made of.</param>
/// <param name="Repeated">Whether its room repeats another one.</param>
/// <param name="Through">The tight space that a cable crosses.</param>
public readonly record struct WorkPlace(bool Fished, WallBuild Build, bool Repeated, TightSpace Through)
{
    /// <summary>Whether nothing there is out of the ordinary.</summary>
    public bool Plain => !Fished && Build is WallBuild.WoodStuds && !Repeated && Through is TightSpace.None;

    internal (bool, WallBuild, bool, TightSpace) Order => (Fished, Build, Repeated, Through);
}
