using Estimator.Engine.Explanations;
using Estimator.Engine.Takeoff;

namespace Estimator.Web.Actuals;

/// <summary>An item as taken off and as used.</summary>
/// <param name="Line">Its line of the takeoff.</param>
/// <param name="Used">What was used; null where nothing was written down.</param>
/// <param name="OverPercent">How much more that is, in percent; null where nothing was written down.</param>
public sealed record MaterialActual(TakeoffLine Line, decimal? Used, Fact? OverPercent)
{
    /// <summary>Whether people count it as a rule: cable, boxes, devices and plates, and what was counted already.</summary>
    public bool Often { get; init; }
}
