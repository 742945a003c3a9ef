using System.Collections.Immutable;
using Estimator.Engine.Layout;

namespace Estimator.Engine.Wiring.Boxes;

/// <summary>Leads from the ids that a user knows to boxes.</summary>
internal static class BoxIds
{
    /// <summary>The box of each device id and equipment id.</summary>
    internal static Dictionary<string, int> Of(HouseLayout layout, ImmutableArray<DraftBox> drafts)
    {
        var boxOf = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var draft in drafts)
        {
            boxOf.TryAdd(draft.Id, draft.Index);
            foreach (var device in draft.Devices)
            {
                boxOf.TryAdd(layout.Devices[device].Id, draft.Index);
            }
        }

        return boxOf;
    }
}
