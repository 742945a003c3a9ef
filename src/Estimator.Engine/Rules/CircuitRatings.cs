using Estimator.Engine.Panels;

namespace Estimator.Engine.Rules;

/// <summary>Breaker rating of each kind of circuit.</summary>
internal static class CircuitRatings
{
    private static RuleTable Table => RuleTables.Of("circuit_ratings");

    /// <summary>The row of a kind; <see cref="CircuitKind.Individual"/> has none, its rating follows from the equipment.</summary>
    internal static RuleRow For(CircuitKind kind) => Table[kind switch
    {
        CircuitKind.SmallAppliance => "small_appliance",
        CircuitKind.Laundry => "laundry",
        CircuitKind.Bathroom => "bathroom",
        CircuitKind.Garage => "garage",
        CircuitKind.Receptacles => "receptacles",
        CircuitKind.Lighting => "lighting",
        CircuitKind.General => "general",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "An individual circuit is rated by its equipment."),
    }];

    /// <summary>Nominal voltage to neutral.</summary>
    internal static RuleRow Volts => Table["volts"];
}
