using System.Collections.Immutable;
using Estimator.Engine;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Wiring;
using Estimator.Web.Catalogues;

namespace Estimator.Web.Findings;

/// <summary>Finds the first of several changed jobs in which a finding stands no more, by working each out.</summary>
internal static class Trial
{
    private const int MostTried = 48;
    private static readonly Lazy<PartsCatalogue> Parts = new(() => CatalogueShelf.BuiltIn().Parts);

    /// <summary>The first job without the finding, and with nothing that is asked for in its place; the job as it was where none is.</summary>
    internal static Job First(Job job, Finding finding, IEnumerable<Job> changed)
    {
        var most = Mandatory(Found(job)) - (finding.Severity is Severity.Mandatory ? 1 : 0);
        return changed.Take(MostTried).FirstOrDefault(c => Found(c) is var found
            && Mandatory(found) <= most && !found.Any(f => f.Code == finding.Code && f.Severity is not Severity.Note && f.Where.Intersect(finding.Where).Any())) ?? job;
    }

    private static int Mandatory(ImmutableArray<Finding> findings) => findings.Count(f => f.Severity is Severity.Mandatory);

    private static ImmutableArray<Finding> Found(Job job) => JobEstimate.Compute(job, Parts.Value, SearchDepth.Quick).Findings;
}
