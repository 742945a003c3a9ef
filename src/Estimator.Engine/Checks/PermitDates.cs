using Estimator.Engine.Findings;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>Says where a rule turns on the day on which the permit is asked for, and that day is not stated.</summary>
/// <remarks>Source: NEC 210.8(F).</remarks>
internal static class PermitDates
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        if (context.Job.Code.PermitDate is not null || context.Rule(ProtectionChecks.GroundFault) is not { } rule)
        {
            return [];
        }

        return context.Layout.Equipment.Where(e => ProtectionRules.ExcusedBefore(context.Edition, Wiring.Circuits.OutletPlaces.Of(context.Layout, e)) is not null).Select(e => context.Asked(
            rule with { Code = "permit-date", Article = "210.8(F)" },
            $"Whether {ServiceReceptacles.Named(e)} outdoors needs ground-fault protection turns on the day of the permit, {ProtectionRules.ExcusedBefore(context.Edition, Wiring.Circuits.OutletPlaces.Of(context.Layout, e))!.Value:yyyy-MM-dd}, and none is stated; it was protected. State the day.",
            [e.Source.Id], Severity.Unjudged));
    }
}
