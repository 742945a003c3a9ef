using Estimator.Engine.Findings;
using Estimator.Engine.House;

namespace Estimator.Engine.Checks;

/// <summary>What 2026 says of vehicle supply equipment, as far as it is settled.</summary>
/// <remarks>Source: NEC 625.4, 625.44, 625.54 in 2026.</remarks>
internal static class ChargingOutlets
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        foreach (var charger in context.Layout.Equipment.Where(e => e.Source.Kind is EquipmentKind.EvCharger))
        {
            if (charger.Connection is Connection.HardWired && context.Rule("ev-ground-fault") is { } unsettled)
            {
                yield return context.Asked(
                    unsettled, $"{ServiceReceptacles.Named(charger)} is hard-wired: a ground-fault breaker may be asked for. The rule was in dispute when it was read; ask the inspector.", [charger.Source.Id], Severity.Unjudged);
            }

            if (charger.Connection is Connection.HardWired && context.Rule("ev-installer") is { } installer)
            {
                yield return context.Asked(
                    installer, $"{ServiceReceptacles.Named(charger)} is permanently installed: that is work for qualified persons, and who counts as one is for the state or the inspector to say.", [charger.Source.Id], Severity.Note);
            }

            if (charger.Connection is Connection.Receptacle && context.Rule("ev-listed-receptacle") is { } listed)
            {
                yield return context.Asked(
                    listed, $"The receptacle of {ServiceReceptacles.Named(charger)} must be listed for charging vehicles. Buy one that says so, or wire the unit directly.", [charger.Source.Id], Severity.Advice);
            }
        }
    }
}
