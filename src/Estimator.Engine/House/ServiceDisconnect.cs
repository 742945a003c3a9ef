namespace Estimator.Engine.House;

/// <summary>Where a dwelling is cut off from its service.</summary>
public enum ServiceDisconnect
{
    /// <summary>By the main breaker of the service panel, indoors or outdoors as the panel hangs.</summary>
    InPanel = 1,

    /// <summary>By a switch outdoors that is marked as emergency disconnect; the main breaker stays the service disconnect.</summary>
    EmergencyOutdoors,

    /// <summary>By the service disconnect itself, outdoors; the panel behind it is fed by four wires.</summary>
    ServiceOutdoors,
}
