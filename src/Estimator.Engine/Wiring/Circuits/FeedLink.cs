namespace Estimator.Engine.Wiring.Circuits;

/// <summary>A feeding link.</summary>
/// <param name="From">The panel node or a box with an unswitched hot.</param>
/// <param name="Unit">The unit that is fed at its entry box.</param>
/// <param name="Way">Which of the unit's ways of being wired is taken.</param>
internal readonly record struct FeedLink(int From, int Unit, int Way);
