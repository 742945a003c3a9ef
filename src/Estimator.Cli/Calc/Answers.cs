using System.Text.Json.Nodes;

namespace Estimator.Cli.Calc;

/// <summary>Shapes of answers.</summary>
internal static class Answers
{
    /// <summary>A number where one was asked, a list where a list was.</summary>
    internal static JsonNode? OneOrList(bool list, IEnumerable<decimal> values) => list ? List(values) : JsonValue.Create(values.First());

    internal static JsonArray List(IEnumerable<decimal> values) => [.. values.Select(v => (JsonNode)v)];

    internal static JsonArray List(IEnumerable<string> values) => [.. values.Select(v => (JsonNode)v)];
}
