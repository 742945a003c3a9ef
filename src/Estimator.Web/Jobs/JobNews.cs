namespace Estimator.Web.Jobs;

/// <summary>Tells open tabs that a job was edited elsewhere.</summary>
public sealed class JobNews
{
    /// <summary>Raised with the job's id and the desk that did it.</summary>
    public event Action<string, object>? Edited;

    /// <summary>Tells the others.</summary>
    public void Tell(string jobId, object by) => Edited?.Invoke(jobId, by);
}
