using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Wiring.Routing;

/// <summary>A kind of cable.</summary>
/// <param name="Method">Wiring method.</param>
/// <param name="Size">Size of its insulated conductors.</param>
/// <param name="Conductors">How many insulated conductors, the grounding conductor not counted.</param>
public readonly record struct CableType(WiringMethod Method, WireSize Size, int Conductors)
{
    /// <summary>The trade name: 12/2, 14/3.</summary>
    public string TradeName => $"{Size}/{Conductors}";

    /// <summary>Id of the catalogue item: <c>nm_b-12-2</c>.</summary>
    public string ItemId => $"{MethodId}-{Size.ToString().Replace('/', '_')}-{Conductors}";

    private string MethodId => Method switch
    {
        WiringMethod.NmB => "nm_b",
        WiringMethod.Mc => "mc",
        WiringMethod.Emt => "emt",
        WiringMethod.Uf => "uf",
        WiringMethod.BuriedConduit => "buried_conduit",
        _ => throw new InvalidOperationException($"{Method} has no cable item."),
    };
}
