using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Wiring.Joints;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Boxes;

/// <summary>What is in a box: the cables that enter and the devices that stand in it.</summary>
/// <param name="Draft">The box.</param>
/// <param name="Entering">The nets of each cable that enters, cable by cable.</param>
/// <param name="Size">Size of the conductors.</param>
/// <param name="Yokes">Devices on yokes.</param>
internal sealed record BoxLoads(DraftBox Draft, ImmutableArray<ImmutableArray<Net>> Entering, WireSize Size, int Yokes)
{
    internal int Insulated => Entering.Sum(e => e.Length);

    internal int Grounds => Entering.Length;

    internal static BoxLoads Of(HouseLayout layout, DraftBox draft, IEnumerable<CableLeg> legs, WireSize size) => new(
        draft,
        [.. legs.Where(l => l.From == draft.Index || l.To == draft.Index).Select(l => l.Nets)],
        size,
        draft.Equipment >= 0 ? 1 : draft.Devices.Count(d => layout.Devices[d].Kind is var kind && (kind.IsSwitch() || kind.IsReceptacle())));
}
