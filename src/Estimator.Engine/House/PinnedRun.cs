namespace Estimator.Engine.House;

/// <summary>A run that stays as stated.</summary>
/// <param name="From">Panel id, or the id of any device in the box it leaves.</param>
/// <param name="To">The id of any device in the box it enters.</param>
/// <param name="Way">How it goes; null lets the engine choose.</param>
/// <param name="Conductors">Which of several cables between the two it is, by insulated conductors; null where there is one.</param>
public sealed record PinnedRun(string From, string To, RunWay? Way = null, int? Conductors = null);
