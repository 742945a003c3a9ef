using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>How many two-wire cables a box can take before the largest box of the catalogue is overfilled.</summary>
internal sealed class EntryLimits(HouseLayout layout, BoxChoice choice)
{
    private readonly Dictionary<(BoxUse Use, bool OldWork, int Gangs, int Yokes, WireSize Wire), int> _known = [];

    internal int Entries(DraftBox draft, WireSize wire)
    {
        if (draft.Use is BoxUse.OwnHousing)
        {
            return (int)WiringSettings.OwnHousingEntries.Number();
        }

        var key = (draft.Use, draft.OldWork, draft.Gangs, BoxLoads.Of(layout, draft, [], wire).Yokes, wire);
        if (!_known.TryGetValue(key, out var entries))
        {
            entries = Count(draft, wire);
            _known.Add(key, entries);
        }

        return entries;
    }

    private int Count(DraftBox draft, WireSize wire)
    {
        var loads = BoxLoads.Of(layout, draft, [], wire);
        var most = (int)WiringSettings.MostEntries.Number() * draft.Gangs;
        var entries = 1;
        while (entries < most && choice.Fits(loads with { Entering = [.. Enumerable.Repeat(ImmutableArray.Create(Net.Hot, Net.Neutral), entries + 1)] }))
        {
            entries++;
        }

        return entries;
    }
}
