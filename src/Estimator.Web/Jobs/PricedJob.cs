using Estimator.Engine;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Wiring;
using Estimator.Web.Catalogues;
using Estimator.Web.Explanations;
using Estimator.Web.Overview;

namespace Estimator.Web.Jobs;

/// <summary>A job with everything worked out, shared by all tabs that show this version of it.</summary>
public sealed record PricedJob
{
    /// <summary>The job.</summary>
    public required Job Job { get; init; }

    /// <summary>Its version in the store.</summary>
    public required int Version { get; init; }

    /// <summary>All stages.</summary>
    public required JobEstimate Estimate { get; init; }

    /// <summary>The catalogue that it was priced with.</summary>
    public required PricedCatalogue Catalogue { get; init; }

    /// <summary>Figures of the frame and the overview, drawn from the stages.</summary>
    public required JobFigures Figures { get; init; }

    /// <summary>What numbers on pages are explained from: the estimate's own pages and those of <see cref="Figures"/>.</summary>
    public required FigureSource Source { get; init; }

    /// <summary>Works everything out. Takes long: never on a circuit's thread.</summary>
    public static PricedJob Compute(Job job, int version, PricedCatalogue catalogue, SearchDepth depth)
    {
        var estimate = JobEstimate.Compute(job, catalogue.Parts, depth);
        var figures = JobFigures.Of(estimate);
        return new PricedJob
        {
            Job = job,
            Version = version,
            Estimate = estimate,
            Catalogue = catalogue,
            Figures = figures,
            Source = new FigureSource(new ExplanationBook(estimate.Book.Pages.Append(figures.Page)), job),
        };
    }
}
