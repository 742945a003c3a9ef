using System.Text;

namespace Estimator.Data.Databases;

/// <summary>Text as both databases can hold it.</summary>
/// <remarks>PostgreSQL refuses the character zero, and neither database holds half of a surrogate pair; both become the replacement character.</remarks>
internal static class StorableText
{
    internal static string Of(string text)
    {
        if (!text.Any(c => c == '\0' || char.IsSurrogate(c)))
        {
            return text;
        }

        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            clean.Append(rune.Value == 0 ? Rune.ReplacementChar : rune);
        }

        return clean.ToString();
    }
}
