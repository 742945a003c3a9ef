using Estimator.Web.Jobs;

namespace Estimator.Web.Frame;

/// <summary>A stage of the job: a page and its one figure in the run.</summary>
/// <param name="Slug">Last part of its address.</param>
/// <param name="Title">Its trade word.</param>
/// <param name="Place">How it hangs on the drawn run.</param>
/// <param name="Figure">Its figure: the number and a small unit.</param>
public sealed record Stage(string Slug, string Title, StagePlace Place, Func<PricedJob, (string Number, string Unit)> Figure);
