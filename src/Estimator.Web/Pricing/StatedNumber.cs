using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.Web.Figures;

namespace Estimator.Web.Pricing;

/// <summary>A number of a job that may be stated or left open, as it is typed into its field.</summary>
internal static class StatedNumber
{
    /// <summary>The change that a typed text makes, or what is wrong with it: first as a number, then in the engine's own words.</summary>
    /// <param name="job">The job at hand.</param>
    /// <param name="text">What was typed; nothing leaves the number open.</param>
    /// <param name="path">Its field in the job file, such as <c>$.bid.permit</c>.</param>
    /// <param name="whole">What is counted, where only whole numbers make sense; else null.</param>
    /// <param name="write">Writes it; null takes it away.</param>
    internal static Parsed<Func<Job, Job>> Change(Job job, string text, string path, string? whole, Func<Job, decimal?, Job> write)
    {
        decimal? value = null;
        if (text.Trim().Length > 0)
        {
            var read = RateText.Read(text);
            if (!read.Ok)
            {
                return Parsed<Func<Job, Job>>.Failure(read.Problem);
            }

            value = read.Value;
            if (whole is not null && value != decimal.Truncate(value.Value))
            {
                return Parsed<Func<Job, Job>>.Failure($"Found {American.Number(value.Value, 4)}; accepted are whole {whole}.");
            }
        }

        Job Next(Job j) => write(j, value);
        var refused = JobFile.Read(JobFile.Write(Next(job)), job.Name).Problems.FirstOrDefault(p => p.Path == path);
        return refused is null ? Parsed<Func<Job, Job>>.Success(Next) : Parsed<Func<Job, Job>>.Failure($"Found {refused.Found}; accepted is {refused.Accepted}.");
    }
}
