using Estimator.Engine.House;

namespace Estimator.Web.Overview;

/// <summary>How much room a panel has for what is new.</summary>
public static class PanelRoom
{
    /// <summary>Spaces that nothing takes which was there before, or which feeds another panel; one side of a tandem takes half a space.</summary>
    public static int FreeSpaces(Job job, Panel panel) =>
        Math.Max(0, panel.Spaces - (PanelCircuits.Halves(job, panel) + 1) / 2 - 2 * job.Panels.Count(p => p.FedFrom == panel.Id && !p.Existing));
}
