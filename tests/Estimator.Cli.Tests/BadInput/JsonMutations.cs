using System.Collections.Immutable;
using System.Text.Json.Nodes;
using CsCheck;

namespace Estimator.Cli.Tests.BadInput;

/// <summary>A file of JSON with one or two values left out, doubled, exchanged or replaced by something that may not belong there.</summary>
internal static class JsonMutations
{
    private const string HalfACharacter = "half a character";

    private static readonly ImmutableArray<string> Values =
    [
        "null", "true", "-1", "0", "1", "0.5", "85", "300", "1e30", "-1e30", "1e-30", "99999999999999999999999", "\"\"", "\"x\"", "\"12'\"", "\"0'\"", "\"-1'\"", "\"1999'\"",
        "\"0.0001 in\"", "[]", "{}", "[null]", "[1,2]", "[[\"0'\",\"0'\"]]", "[\"0'\",\"0'\"]", "\"void\"", "\"outdoors\"", "\"2026-02-30\"", "\"=1+1\"", "\"\\u0000\"", $"\"{HalfACharacter}\"",
    ];

    internal static Gen<string> Of(string json)
    {
        var places = Places(JsonNode.Parse(json)!).Count();
        var one = Gen.Select(Gen.Int[0, places - 1], Gen.Int[0, places - 1], Gen.Int[-3, Values.Length - 1]);
        return Gen.Select(one, one, Gen.Bool).Select((first, second, twice) =>
        {
            var root = JsonNode.Parse(json)!;
            Mutate(root, first);
            if (twice)
            {
                Mutate(root, second);
            }

            return root.ToJsonString().Replace(HalfACharacter, "\\ud800", StringComparison.Ordinal);
        });
    }

    private static void Mutate(JsonNode root, (int At, int Other, int How) change)
    {
        var places = Places(root).ToList();
        if (places.Count == 0)
        {
            return;
        }

        var (parent, name, index) = places[change.At % places.Count];
        var other = places[change.Other % places.Count];
        var copy = (other.Name is { } n ? other.Parent[n] : other.Parent[other.Index])?.DeepClone();
        switch (change.How)
        {
            case -3 when name is null:
                parent.AsArray().RemoveAt(index);
                break;
            case -3:
                parent.AsObject().Remove(name);
                break;
            case -2 when name is null:
                parent.AsArray().Insert(index, parent[index]?.DeepClone());
                break;
            default:
                Put(parent, name, index, change.How < 0 ? copy : JsonNode.Parse(Values[change.How]));
                break;
        }
    }

    private static void Put(JsonNode parent, string? name, int index, JsonNode? value)
    {
        if (name is null)
        {
            parent[index] = value;
        }
        else
        {
            parent[name] = value;
        }
    }

    private static IEnumerable<(JsonNode Parent, string? Name, int Index)> Places(JsonNode? node) => node switch
    {
        JsonObject thing => thing.SelectMany(p => Places(p.Value).Prepend((thing, p.Key, -1))),
        JsonArray list => list.SelectMany((v, i) => Places(v).Prepend((list, null, i))),
        _ => [],
    };
}
