namespace Estimator.Engine.Rules;

/// <summary>Turns the name of an enum member into the word that tables and files use: RecessedLight is recessed_light.</summary>
internal static class Words
{
    internal static string Snake<T>(T member)
        where T : struct, Enum => System.Text.Json.JsonNamingPolicy.SnakeCaseLower.ConvertName(member.ToString());
}
