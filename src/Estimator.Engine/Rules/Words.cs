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
        where T : struct, Enum => Known.GetOrAdd(member, m => WordOf(typeof(T).GetField(m.ToString())!));

    private static string WordOf(FieldInfo field) =>
        field.GetCustomAttribute<JsonStringEnumMemberNameAttribute>()?.Name ?? JsonNamingPolicy.SnakeCaseLower.ConvertName(field.Name);
}
