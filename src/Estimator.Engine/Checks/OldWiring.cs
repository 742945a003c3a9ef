using Estimator.Engine.Findings;
using Estimator.Engine.House;

namespace Estimator.Engine.Checks;

/// <summary>Old wiring that a walk-through found or left open, and whether money is set aside for it.</summary>
/// <remarks>With an allowance it is said and counted; without one it asks for it. Source: NEC 406.4(D); articles 394 and 110.14 from memory.</remarks>
internal static class OldWiring
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        foreach (var unknown in context.Job.Unknowns)
        {
            if (KeyOf(unknown.Topic) is not { } key || context.Rule(key) is not { } rule)
            {
                continue;
            }

            var where = context.House.Rooms.FirstOrDefault(r => r.Source.Id == unknown.Room) is { } room ? room.Source.Called() : "The dwelling";
            var set = unknown.Allowance is { } money
                ? FormattableString.Invariant($"${money.ToDollars():0.##} is set aside for it.")
                : "Nothing is set aside for it: state an allowance.";
            yield return context.Asked(
                rule, $"{where}: {Said(unknown.Topic)} {set}", unknown.Room is { } id ? [unknown.Id, id] : [unknown.Id], unknown.Allowance is null ? Severity.Advice : Severity.Note);
        }
    }

    private static string? KeyOf(UnknownTopic topic) => topic switch
    {
        UnknownTopic.Ungrounded or UnknownTopic.GroundingPresent or UnknownTopic.OldWiring => "old-ungrounded",
        UnknownTopic.KnobAndTube => "old-knob-and-tube",
        UnknownTopic.AluminiumWiring => "old-aluminium",
        UnknownTopic.SharedNeutrals => "old-shared-neutrals",
        _ => null,
    };

    private static string Said(UnknownTopic topic) => topic switch
    {
        UnknownTopic.Ungrounded => "old outlets have no ground. A replaced receptacle is a nongrounding one, or has ground-fault protection and is marked so; today's arc-fault, tamper and weather rules hold for it too.",
        UnknownTopic.GroundingPresent => "whether old outlets are grounded is not known. A replaced receptacle follows today's grounding, ground-fault, arc-fault, tamper and weather rules for its place.",
        UnknownTopic.OldWiring => "what old wiring is there is not known. A replaced receptacle follows today's grounding, ground-fault, arc-fault, tamper and weather rules for its place.",
        UnknownTopic.KnobAndTube => "old wiring is knob and tube. It has no ground, may not be covered with insulation and is not to be extended without a box at each joint; rewiring is usual.",
        UnknownTopic.AluminiumWiring => "old branch circuits are of aluminium. Devices and splices must be listed for it; each joint is remade with such parts, or the circuit is rewired.",
        UnknownTopic.SharedNeutrals => "old circuits share neutrals. Their breakers open together, and a ground-fault or arc-fault breaker on one of them will trip until they are parted.",
        _ => throw new ArgumentOutOfRangeException(nameof(topic), topic, "No such old wiring."),
    };
}
