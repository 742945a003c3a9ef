using System.Globalization;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Web.Entries;

namespace Estimator.Web.Panels;

/// <summary>Plain words for work on a service.</summary>
public static class ServiceWords
{
    /// <summary>How the utility's conductors arrive.</summary>
    public static IReadOnlyList<Option> Entrances { get; } = Option.Of<ServiceEntrance>(Of);

    /// <summary>Metals of service conductors.</summary>
    public static IReadOnlyList<Option> Metals { get; } = Option.Of<ConductorMetal>(m => m is ConductorMetal.Copper ? "copper" : "aluminium");

    /// <summary>Places of the disconnect, the edition's first.</summary>
    public static IReadOnlyList<Option> Disconnects(CodeEdition edition) => Option.Of<ServiceDisconnect>($"{Of(ServicePartRules.DisconnectFor((int)edition))}, as NEC {(int)edition}", Of);

    /// <summary>The usual length that a row of the service table states, as a hint in a field.</summary>
    public static string Usual(RuleRow row) => string.Create(CultureInfo.InvariantCulture, $"{row.Number():0} ft");

    /// <summary>A length as a field shows it.</summary>
    public static string Of(Length? length) => length?.ToString() ?? "";

    private static string Of(ServiceEntrance entrance) => entrance switch
    {
        ServiceEntrance.Overhead => "overhead, to a mast",
        ServiceEntrance.Underground => "underground, up a riser",
        _ => throw new ArgumentOutOfRangeException(nameof(entrance), entrance, "No such entrance."),
    };

    private static string Of(ServiceDisconnect place) => place switch
    {
        ServiceDisconnect.InPanel => "main breaker in the panel",
        ServiceDisconnect.EmergencyOutdoors => "emergency disconnect outdoors",
        ServiceDisconnect.ServiceOutdoors => "service disconnect outdoors",
        _ => throw new ArgumentOutOfRangeException(nameof(place), place, "No such place."),
    };
}
