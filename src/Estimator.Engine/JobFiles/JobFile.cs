using System.Text.Json;
using System.Text.Json.Nodes;
using Estimator.Engine.House;

namespace Estimator.Engine.JobFiles;

/// <summary>Reads and writes the job file.</summary>
/// <remarks>
/// JSON, snake_case; lengths are text with their unit, points are pairs. An unknown field, a repeated field, a missing one or a value of the wrong
/// kind is refused with its path. Older versions are brought up by <see cref="JobUpgrades"/>; newer ones are refused.
/// </remarks>
public static class JobFile
{
    /// <summary>Reads a job.</summary>
    /// <param name="json">The text.</param>
    /// <param name="fileName">The file's name, for messages.</param>
    public static JobReading Read(string json, string fileName)
    {
        if (BrokenText.PathIn(json) is { } broken)
        {
            return JobReading.Refused(new JobProblem(fileName, broken, BrokenText.Found, BrokenText.Accepted));
        }

        try
        {
            var node = JsonNode.Parse(json, documentOptions: new JsonDocumentOptions { MaxDepth = JobLimits.Depth, AllowDuplicateProperties = false });
            if (node is not JsonObject file)
            {
                return JobReading.Refused(new JobProblem(fileName, "$", node is null ? "nothing" : "no object", "an object with schema, id, name, levels and panels"));
            }

            if (JobUpgrades.Apply(file, fileName) is { } refused)
            {
                return JobReading.Refused(refused);
            }

            if (EmptyEntries.Of(file, fileName) is { IsEmpty: false } empty)
            {
                return JobReading.Refused(empty);
            }

            var job = file.Deserialize<Job>(JobJson.Options);
            return job is null
                ? JobReading.Refused(new JobProblem(fileName, "$", "nothing", "an object with schema, id, name, levels and panels"))
                : JobReading.Of(job, JobValidation.Problems(job, fileName));
        }
        catch (JsonException e)
        {
            return JobReading.Refused(JobProblem.Of(e, fileName));
        }
        catch (ArgumentException e)
        {
            return JobReading.Refused(new JobProblem(fileName, "$", e.Message, "each field once"));
        }
    }

    /// <summary>Writes a job; reading it again gives the same job.</summary>
    public static string Write(Job job) => JsonSerializer.Serialize(job, JobJson.Options).ReplaceLineEndings("\n") + "\n";
}
