using Estimator.Engine.House;

namespace Estimator.Web.Findings;

/// <summary>A change that mends a finding in one step.</summary>
/// <param name="Act">What the button says.</param>
/// <param name="Title">What the log says.</param>
/// <param name="Change">Makes the mended job.</param>
public sealed record Mend(string Act, string Title, Func<Job, Job> Change);
