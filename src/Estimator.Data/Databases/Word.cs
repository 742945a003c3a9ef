using System.Text.Json;

namespace Estimator.Data.Databases;

/// <summary>Members of enums as the words that job files use: RoughIn is rough_in.</summary>
internal static class Word
{
    internal static string Of<T>(T member)
        where T : struct, Enum => JsonNamingPolicy.SnakeCaseLower.ConvertName(member.ToString());

    internal static T Read<T>(string word)
        where T : struct, Enum => Enum.GetValues<T>().Single(m => Of(m) == word);
}
