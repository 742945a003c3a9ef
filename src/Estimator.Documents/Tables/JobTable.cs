namespace Estimator.Documents.Tables;

/// <summary>Which table of an estimate is written as CSV.</summary>
public enum JobTable
{
    /// <summary>Quantities of items.</summary>
    Takeoff = 1,

    /// <summary>Hours by item and phase.</summary>
    Labor,

    /// <summary>Packs and coils to buy.</summary>
    Purchase,

    /// <summary>How coils are cut.</summary>
    CutPlan,

    /// <summary>Circuits.</summary>
    Circuits,

    /// <summary>Every panel, space by space.</summary>
    PanelSchedule,

    /// <summary>Load calculations, line by line.</summary>
    Loads,

    /// <summary>Devices and where they stand.</summary>
    Devices,

    /// <summary>What a reader must know, worst first.</summary>
    Findings,

    /// <summary>How the range of the price was drawn: what moves it, and the histogram.</summary>
    Range,

    /// <summary>From cost to price.</summary>
    Bid,

    /// <summary>Runs as they are pulled.</summary>
    PullList,

    /// <summary>Boxes with their fill.</summary>
    Boxes,

    /// <summary>What is joined in each box.</summary>
    BoxContents,

    /// <summary>Tools and consumables.</summary>
    Tools,

    /// <summary>Tests of circuits and panels, with what is expected.</summary>
    Tests,

    /// <summary>What is left over of packs and coils.</summary>
    LeftOver,

    /// <summary>Every figure with those that it was made from.</summary>
    Explanations,

    /// <summary>Alternates and packages, each with what it does to the price.</summary>
    Alternates,

    /// <summary>Unit prices for later adds.</summary>
    UnitPrices,

    /// <summary>The schedule of values.</summary>
    ScheduleOfValues,
}
