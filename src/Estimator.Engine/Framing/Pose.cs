using Estimator.Engine.Measures;

namespace Estimator.Engine.Framing;

/// <summary>How the canonical pose lies on the user's grid: mirror, turn, shift.</summary>
/// <param name="SwapAxes">Whether the canonical x is the user's y.</param>
/// <param name="FlipX">Whether the canonical x runs against the user's axis.</param>
/// <param name="FlipY">Whether the canonical y runs against the user's axis.</param>
/// <param name="Origin">The user's point, in sixteenths, that lies at the canonical origin.</param>
public sealed record Pose(bool SwapAxes, bool FlipX, bool FlipY, PlanPoint Origin)
{
    /// <summary>From the user's grid to the canonical pose.</summary>
    public PlanPoint ToCanonical(PlanPoint grid)
    {
        var (x, y) = (grid.X - Origin.X, grid.Y - Origin.Y);
        (x, y) = SwapAxes ? (y, x) : (x, y);
        return new PlanPoint(FlipX ? -x : x, FlipY ? -y : y);
    }

    /// <summary>From the canonical pose to the user's grid.</summary>
    public PlanPoint ToGrid(PlanPoint canonical)
    {
        var (x, y) = (FlipX ? -canonical.X : canonical.X, FlipY ? -canonical.Y : canonical.Y);
        (x, y) = SwapAxes ? (y, x) : (x, y);
        return new PlanPoint(x + Origin.X, y + Origin.Y);
    }
}
