using Estimator.Engine.House;

namespace Estimator.Web.Budget;

/// <summary>A room and what its owner wants in it beyond the least.</summary>
/// <param name="Id">Stable id.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Kind">What it is used for.</param>
/// <param name="Size">Its two sides.</param>
public sealed record BudgetRoom(string Id, string Name, RoomKind Kind, RectangleSize Size)
{
    /// <summary>Receptacles closer to one another than the code's least.</summary>
    public bool CloseReceptacles { get; init; }

    /// <summary>Recessed lights on a dimmer in place of one ceiling light.</summary>
    public bool RecessedLights { get; init; }

    /// <summary>A ceiling fan with a light.</summary>
    public bool CeilingFan { get; init; }

    /// <summary>The same room with no wish beyond the least.</summary>
    public BudgetRoom Least => this with { CloseReceptacles = false, RecessedLights = false, CeilingFan = false };
}
