using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Joints;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>How many feeding cables may still leave a box before the largest box of the catalogue is overfilled.</summary>
internal sealed class EntryLimits(HouseLayout layout, BoxChoice choice)
{
    private static readonly ImmutableArray<Net> TwoWire = [Net.Hot, Net.Neutral];

    private readonly Dictionary<(BoxUse Use, bool OldWork, int Gangs, int Yokes, int Insulated, int Cables, WireSize Wire), int> _known = [];

    /// <summary>The number for a box.</summary>
    /// <param name="draft">The box.</param>
    /// <param name="legs">The cables inside its unit.</param>
    /// <param name="fed">Whether the feed enters here besides.</param>
    /// <param name="wire">Size of the conductors.</param>
    internal int Leaving(DraftBox draft, IEnumerable<CableLeg> legs, bool fed, WireSize wire)
    {
        var loads = BoxLoads.Of(layout, draft, legs, wire);
        loads = fed ? loads with { Entering = loads.Entering.Add(TwoWire) } : loads;
        if (draft.Use is BoxUse.OwnHousing)
        {
            return Math.Max(0, (int)WiringSettings.OwnHousingEntries.Number() - loads.Entering.Length);
        }

        var key = (draft.Use, draft.OldWork, draft.Gangs, loads.Yokes, loads.Insulated, loads.Entering.Length, wire);
        if (!_known.TryGetValue(key, out var leaving))
        {
            leaving = Count(loads);
            _known.Add(key, leaving);
        }

        return leaving;
    }

    /// <summary>Whether a box holds the cables of its unit.</summary>
    /// <param name="draft">The box.</param>
    /// <param name="legs">The cables inside its unit.</param>
    /// <param name="fed">Whether the feed enters here besides.</param>
    /// <param name="wire">Size of the conductors.</param>
    internal bool Hold(DraftBox draft, IEnumerable<CableLeg> legs, bool fed, WireSize wire)
    {
        var loads = BoxLoads.Of(layout, draft, legs, wire);
        loads = fed ? loads with { Entering = loads.Entering.Add(TwoWire) } : loads;
        return draft.Use is BoxUse.OwnHousing
            ? loads.Entering.Length <= (int)WiringSettings.OwnHousingEntries.Number()
            : loads.Entering.Length <= (int)WiringSettings.MostEntries.Number() * draft.Gangs && choice.Fits(loads);
    }

    private int Count(BoxLoads loads)
    {
        var most = (int)WiringSettings.MostEntries.Number() * loads.Draft.Gangs - loads.Entering.Length;
        var leaving = 0;
        while (leaving < most && choice.Fits(loads with { Entering = [.. loads.Entering, .. Enumerable.Repeat(TwoWire, leaving + 1)] }))
        {
            leaving++;
        }

        return leaving;
    }
}
