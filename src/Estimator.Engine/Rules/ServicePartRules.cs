using Estimator.Engine.House;

namespace Estimator.Engine.Rules;

/// <summary>What a service is made of.</summary>
public static class ServicePartRules
{
    private static RuleTable Table => RuleTables.Of("service_parts");

    /// <summary>Overhead service conductors, feet.</summary>
    public static RuleRow OverheadFeet => Table["overhead_ft"];

    /// <summary>Underground service conductors, feet.</summary>
    public static RuleRow UndergroundFeet => Table["underground_ft"];

    /// <summary>From an outdoor disconnect to the panel, feet.</summary>
    public static RuleRow DisconnectToPanelFeet => Table["disconnect_to_panel_ft"];

    /// <summary>To a concrete-encased electrode, feet.</summary>
    public static RuleRow EncasedFeet => Table["encased_ft"];

    /// <summary>To a metal water pipe, feet.</summary>
    public static RuleRow WaterPipeFeet => Table["water_pipe_ft"];

    /// <summary>Days of waiting for the utility.</summary>
    public static RuleRow UtilityWaitDays => Table["utility_wait_days"];

    /// <summary>The row that says where an edition wants the house to be cut off.</summary>
    public static RuleRow PlaceFor(int year) => Table.Rows.First(r => r.Has("place") && r.StandsIn(year));

    /// <summary>Where an edition wants the house to be cut off.</summary>
    public static ServiceDisconnect DisconnectFor(int year) => PlaceFor(year).Text("place") switch
    {
        "in_panel" => ServiceDisconnect.InPanel,
        "emergency_outdoors" => ServiceDisconnect.EmergencyOutdoors,
        "service_outdoors" => ServiceDisconnect.ServiceOutdoors,
        var other => throw new InvalidDataException($"service_parts: {other} is no place of a disconnect."),
    };

    /// <summary>The smallest meter base for a rating; null where none is so large.</summary>
    public static int? MeterBase(decimal amperes) => Smallest("meter-", amperes);

    /// <summary>The smallest outdoor disconnect for a rating; null where none is so large.</summary>
    public static int? Disconnect(decimal amperes) => Smallest("disconnect-", amperes);

    private static int? Smallest(string kind, decimal amperes) =>
        Table.Rows.Where(r => r.Key.StartsWith(kind, StringComparison.Ordinal)).Select(r => (int?)r.Number("rating_a")).FirstOrDefault(r => r >= amperes);
}
