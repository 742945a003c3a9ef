namespace Estimator.Web.Frame;

/// <summary>How a stage hangs on the drawn run.</summary>
public enum StagePlace
{
    /// <summary>A splice on the line.</summary>
    Line = 1,

    /// <summary>A tap: it reads and changes nothing.</summary>
    Tap,

    /// <summary>On the second way, which parts after the takeoff and meets the line at the bid.</summary>
    SecondWay,
}
