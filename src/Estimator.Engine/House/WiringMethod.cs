using System.Text.Json.Serialization;

namespace Estimator.Engine.House;

/// <summary>How conductors are run.</summary>
public enum WiringMethod
{
    /// <summary>Nonmetallic-sheathed cable, NM-B.</summary>
    [JsonStringEnumMemberName("nm_b")]
    NmB = 1,

    /// <summary>Metal-clad cable.</summary>
    Mc,

    /// <summary>Electrical metallic tubing with conductors.</summary>
    Emt,

    /// <summary>Underground feeder cable.</summary>
    Uf,

    /// <summary>Conduit in the ground with conductors.</summary>
    BuriedConduit,
}
