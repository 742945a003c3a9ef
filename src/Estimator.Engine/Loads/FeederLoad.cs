namespace Estimator.Engine.Loads;

/// <summary>The load of a panel that another panel feeds.</summary>
/// <param name="PanelId">The panel.</param>
/// <param name="Sheet">Its calculation.</param>
public sealed record FeederLoad(string PanelId, LoadWorksheet Sheet);
