using Estimator.Engine.House;

namespace Estimator.Cli;

/// <summary>Reads an edition by its name.</summary>
internal static class Editions
{
    internal static CodeEdition Parse(string name)
    {
        foreach (var edition in Enum.GetValues<CodeEdition>())
        {
            if (string.Equals(name, $"NEC-{(int)edition}", StringComparison.OrdinalIgnoreCase))
            {
                return edition;
            }
        }

        throw new WrongInputException($"--edition: found '{name}'; one of {string.Join(", ", Enum.GetValues<CodeEdition>().Select(e => $"NEC-{(int)e}"))} is accepted.");
    }
}
