using System.Text.Json.Serialization;

namespace Estimator.Engine.House;

/// <summary>Editions of the National Electrical Code that the rule tables know.</summary>
public enum CodeEdition
{
    /// <summary>NEC 2017.</summary>
    [JsonStringEnumMemberName("NEC-2017")]
    Nec2017 = 2017,

    /// <summary>NEC 2020.</summary>
    [JsonStringEnumMemberName("NEC-2020")]
    Nec2020 = 2020,

    /// <summary>NEC 2023.</summary>
    [JsonStringEnumMemberName("NEC-2023")]
    Nec2023 = 2023,

    /// <summary>NEC 2026.</summary>
    [JsonStringEnumMemberName("NEC-2026")]
    Nec2026 = 2026,
}
