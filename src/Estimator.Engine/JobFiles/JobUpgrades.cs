using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Estimator.Engine.House;

namespace Estimator.Engine.JobFiles;

/// <summary>Brings a job file of an older version up, one version a step.</summary>
internal static class JobUpgrades
{
    private const string Form = "estimator-job/";

    // A step for each older version: the step at index 0 brings version 1 to version 2. There is but one version yet.
    private static readonly ImmutableArray<Action<JsonObject>> Steps = [];

    internal static JobProblem? Apply(JsonObject file, string fileName)
    {
        var newest = Steps.Length + 1;
        var stated = file["schema"] is JsonValue value && value.GetValueKind() is JsonValueKind.String ? value.GetValue<string>() : null;
        if (stated is null || !stated.StartsWith(Form, StringComparison.Ordinal) || !int.TryParse(stated[Form.Length..], out var version) || version < 1)
        {
            return new JobProblem(fileName, "$.schema", stated is null ? "no text" : $"'{Shortened(stated)}'", $"{Form}1 to {Form}{newest}");
        }

        if (version > newest)
        {
            return new JobProblem(fileName, "$.schema", $"version {version}, made by a newer program", $"{Form}1 to {Form}{newest}: update this program");
        }

        foreach (var step in Steps.Skip(version - 1))
        {
            step(file);
        }

        file["schema"] = Job.CurrentSchema;
        return null;
    }

    private static string Shortened(string text) => text.Length > 40 ? text[..40] : text;
}
