using Estimator.Engine.Catalogue;

namespace Estimator.Engine.Changes;

/// <summary>How far the work is when a change is agreed: what is done is not given back, and taking it out costs.</summary>
public enum WorkDone
{
    /// <summary>Nothing is built.</summary>
    Nothing = 1,

    /// <summary>The rough-in has passed.</summary>
    RoughedIn,

    /// <summary>Devices and the panel are in.</summary>
    TrimmedOut,
}

/// <summary>Which phases are over.</summary>
internal static class WorkDoneTraits
{
    internal static bool Over(this WorkDone done, WorkPhase phase) => phase switch
    {
        WorkPhase.Layout or WorkPhase.RoughIn => done is not WorkDone.Nothing,
        WorkPhase.Panel or WorkPhase.TrimOut => done is WorkDone.TrimmedOut,
        _ => false,
    };
}
