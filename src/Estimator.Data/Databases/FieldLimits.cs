namespace Estimator.Data.Databases;

/// <summary>Refuses what a field can't hold, before anything is written.</summary>
internal static class FieldLimits
{
    internal static void Text(string text, int least, int most, string field)
    {
        if (text.Trim().Length < least || text.Length > most)
        {
            throw new ArgumentException($"{field} has {text.Length} characters; {least} to {most} are accepted.", field);
        }
    }
}
