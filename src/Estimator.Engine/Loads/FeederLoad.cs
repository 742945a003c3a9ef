using Estimator.Engine.Explanations;

namespace Estimator.Engine.Loads;

/// <summary>The load of a panel that another panel feeds.</summary>
/// <param name="PanelId">The panel.</param>
/// <param name="Sheet">Its calculation.</param>
/// <param name="VoltageDropPercent">Voltage drop of its feeder at that load, in percent; null where no new cable is run.</param>
public sealed record FeederLoad(string PanelId, LoadWorksheet Sheet, Fact? VoltageDropPercent = null);
