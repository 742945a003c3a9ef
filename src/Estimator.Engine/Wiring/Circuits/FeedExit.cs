namespace Estimator.Engine.Wiring.Circuits;

/// <summary>A box with an unswitched hot and a neutral, from which the feed may go on.</summary>
/// <param name="Box">The box.</param>
/// <param name="Cables">How many feeding cables may still leave it before it is overfilled.</param>
internal readonly record struct FeedExit(int Box, int Cables);
