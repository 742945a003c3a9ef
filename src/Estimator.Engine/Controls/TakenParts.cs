namespace Estimator.Engine.Controls;

/// <summary>Switches and loads that have their control already.</summary>
internal sealed class TakenParts
{
    internal HashSet<int> Switches { get; } = [];

    internal HashSet<ControlledLoad> Loads { get; } = [];

    internal bool Has(ControlledLoad load) =>
        Loads.Contains(load) || Loads.Contains(load with { Part = LoadPart.Whole });
}
