namespace Estimator.Engine.Rules;

/// <summary>Conductors of services and of equipment grounding.</summary>
/// <remarks>Source: NEC tables 310.12 and 250.122.</remarks>
public static class ServiceConductors
{
    /// <summary>The row for a service rating; null where the table has none so large.</summary>
    public static RuleRow? ForRating(decimal amperes) => RuleTables.Of("service_conductors").Rows.FirstOrDefault(r => r.Number("rating_a") >= amperes);

    /// <summary>Ratings of services in the table, amperes.</summary>
    public static IEnumerable<decimal> Ratings => RuleTables.Of("service_conductors").Rows.Select(r => r.Number("rating_a"));

    /// <summary>The grounding conductor for an overcurrent device; null where the table has none so large.</summary>
    public static RuleRow? Grounding(decimal amperes) => RuleTables.Of("grounding_conductors").Rows.FirstOrDefault(r => r.Number("device_a") >= amperes);
}
