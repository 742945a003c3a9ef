namespace Estimator.Data.Databases;

/// <summary>What became of a save.</summary>
/// <typeparam name="T">What was saved.</typeparam>
/// <param name="Saved">Whether it was saved; false where somebody else had saved in between, and nothing was overwritten.</param>
/// <param name="Stored">What is stored now: one's own, or the other one's.</param>
public sealed record Saving<T>(bool Saved, T Stored);
