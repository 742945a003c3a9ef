using System.Collections.Concurrent;
using Estimator.Engine.House;
using Estimator.Engine.Wiring;
using Estimator.Web.Catalogues;

namespace Estimator.Web.Jobs;

/// <summary>Works estimates out away from the pages' threads and keeps the latest, so that every tab on a version of a job shares one.</summary>
public sealed class EstimateShelf
{
    private const int Kept = 24;
    private readonly ConcurrentDictionary<(string Job, int Version, string Catalogue, SearchDepth Depth), Lazy<Task<PricedJob>>> _estimates = new();
    private readonly ConcurrentQueue<(string Job, int Version, string Catalogue, SearchDepth Depth)> _order = new();

    /// <summary>The estimate of a stored version of a job.</summary>
    public Task<PricedJob> For(Job job, int version, PricedCatalogue catalogue, SearchDepth depth)
    {
        var key = (job.Id, version, catalogue.Parts.Hash, depth);
        var made = _estimates.GetOrAdd(key, k =>
        {
            _order.Enqueue(k);
            return new Lazy<Task<PricedJob>>(() => Task.Run(() => PricedJob.Compute(job, version, catalogue, depth)));
        });
        while (_estimates.Count > Kept && _order.TryDequeue(out var oldest))
        {
            _estimates.TryRemove(oldest, out _);
        }

        return made.Value;
    }

    /// <summary>An estimate of a job that is not stored, such as one with a mend tried on it.</summary>
    public static Task<PricedJob> TryAsync(Job job, PricedCatalogue catalogue, SearchDepth depth = SearchDepth.Quick) => Task.Run(() => PricedJob.Compute(job, 0, catalogue, depth));
}
