using Estimator.Engine.House;

namespace Estimator.Web.Overview;

/// <summary>How much room a panel has for what is new.</summary>
public static class PanelRoom
{
    /// <summary>Spaces that no existing circuit takes; one side of a tandem takes half a space.</summary>
    public static int FreeSpaces(Panel panel) => Math.Max(0, panel.Spaces - (panel.Circuits.Sum(c => c.Tandem ? 1 : 2 * c.Poles) + 1) / 2);
}
