namespace Estimator.Engine.Framing;

/// <summary>What a way through the framing costs in length and holes, in sixteenths of an inch.</summary>
/// <param name="Horizontal">Along walls, joists or studs.</param>
/// <param name="Vertical">Rises and drops.</param>
/// <param name="Bores">Holes to bore.</param>
public readonly record struct WayLength(int Horizontal, int Vertical, int Bores);
