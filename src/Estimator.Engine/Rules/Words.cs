using System.Collections.Concurrent;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Estimator.Engine.Rules;

/// <summary>Turns the name of an enum member into the word that tables and files use: RecessedLight is recessed_light.</summary>
internal static class Words
{
    private static readonly ConcurrentDictionary<Enum, string> Known = new();

    internal static string Snake<T>(T member)
        where T : struct, Enum => Known.GetOrAdd(member, m => Of(typeof(T).GetField(m.ToString())!));

    internal static string Of(FieldInfo field) =>
        field.GetCustomAttribute<JsonStringEnumMemberNameAttribute>()?.Name ?? JsonNamingPolicy.SnakeCaseLower.ConvertName(field.Name);
}
