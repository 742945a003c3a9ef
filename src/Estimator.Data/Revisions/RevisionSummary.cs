using Estimator.Engine.Contracts;
using Estimator.Engine.Measures;

namespace Estimator.Data.Revisions;

/// <summary>A saved revision in a list.</summary>
/// <param name="JobId">The job.</param>
/// <param name="Number">1 for the job's first revision.</param>
/// <param name="JobVersion">Version of the job that was priced.</param>
/// <param name="EngineHash">The engine and rules that priced it.</param>
/// <param name="Life">What happened to it as a bid.</param>
/// <param name="Note">What the user wanted to remember.</param>
/// <param name="Who">Who saved it.</param>
/// <param name="At">When, UTC.</param>
/// <param name="DirectCost">Material, labor and the other direct cost.</param>
/// <param name="Low">Low end of the range.</param>
/// <param name="Likely">The price.</param>
/// <param name="High">High end of the range.</param>
/// <param name="Hours">Hours of the job.</param>
public sealed record RevisionSummary(
    string JobId, int Number, int JobVersion, string EngineHash, BidLife Life, string Note, string Who, DateTimeOffset At, Money DirectCost, Money Low, Money Likely, Money High, LaborTime Hours);
