using System.Text.Json.Nodes;

namespace Estimator.Cli.Tests;

/// <summary>Puts a value into a job file at a path such as <c>$.levels[0].rooms[2].kind</c>.</summary>
internal static class JobPaths
{
    internal static void Put(JsonObject job, string path, JsonNode? value)
    {
        JsonNode at = job;
        var steps = path[2..].Replace("[", ".[", StringComparison.Ordinal).Split('.');
        for (var i = 0; i < steps.Length; i++)
        {
            var last = i == steps.Length - 1;
            if (steps[i].StartsWith('['))
            {
                var index = int.Parse(steps[i].Trim('[', ']'), System.Globalization.CultureInfo.InvariantCulture);
                if (last)
                {
                    at.AsArray()[index] = value;
                    return;
                }

                at = at.AsArray()[index]!;
            }
            else if (last)
            {
                at.AsObject()[steps[i]] = value;
            }
            else
            {
                at = at.AsObject()[steps[i]]!;
            }
        }
    }
}
