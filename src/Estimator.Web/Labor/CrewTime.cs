using System.Runtime.CompilerServices;
using Estimator.Engine.Explanations;
using Estimator.Engine.Labor;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;

namespace Estimator.Web.Labor;

/// <summary>How long the crew is on the job.</summary>
/// <remarks>The engine's crew and calendar; nothing is worked out here.</remarks>
public sealed record CrewTime
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = FigurePages.Crew;

    private static readonly ConditionalWeakTable<PricedJob, CrewTime> Known = [];

    /// <summary>Its days and those of waiting.</summary>
    public required JobCalendar Calendar { get; init; }

    /// <summary>What explains them.</summary>
    public required FigureSource Source { get; init; }

    /// <summary>The time of a priced job.</summary>
    public static CrewTime Of(PricedJob priced) => Known.GetValue(priced, Draw);

    private static CrewTime Draw(PricedJob priced)
    {
        var (page, estimate) = (new PageWriter(PageNumber), priced.Estimate);
        return new CrewTime
        {
            Calendar = JobCalendar.Of(page, priced.Job.Bid, estimate.Labor, estimate.Bid.Crew),
            Source = priced.Source.With(page.ToPage()),
        };
    }
}
