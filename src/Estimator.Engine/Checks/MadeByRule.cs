using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Checks;

/// <summary>Rules that wiring and takeoff are made by: where they apply they are held, apart from what a firm's own figures can break.</summary>
/// <remarks>
/// Plates over holes, fasteners, marked whites, sizes of grounding, electrode, feeder and service conductors, receptacles by the rating of their circuit. Tests of
/// the parts hold each of them. Source: NEC 200.7(C), 210.21(B), 250.66, 250.122, 250.142, 300.4, 300.14, 310.12, 334.30.
/// </remarks>
internal static class MadeByRule
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        var cable = context.Wiring.Runs.Any(r => r.Cable.Method is WiringMethod.NmB && !r.Fished);
        var service = context.Job.Service is not null;
        var feeders = !context.Wiring.Feeders.IsEmpty;
        (string Key, bool Applies)[] made =
        [
            ("multiwire", context.Wiring.Circuits.Any(c => c.SharesNeutralWith is not null)),
            ("cable-protection", cable),
            ("cable-support", cable),
            ("marked-white", context.Wiring.Runs.Any(r => r.Conductors.Any(c => c.ReMarked))),
            ("receptacle-rating", context.Layout.Devices.Any(d => d.Kind.IsReceptacle())),
            ("feeder-conductors", feeders || service),
            ("grounding-conductors", feeders || context.Wiring.Runs.Any(r => RunMethods.Raceway(r.Cable.Method) is not null)),
            ("four-wire-feeder", feeders),
            ("electrode-conductor", service || context.Job.Panels.Any(p => p is { Existing: false, FedFrom: null })),
        ];
        foreach (var rule in made.Where(m => m.Applies).Select(m => context.Rule(m.Key)).OfType<CodeRule>())
        {
            context.Applies(rule);
        }

        return FreeConductor(context);
    }

    private static IEnumerable<Finding> FreeConductor(CheckContext context)
    {
        if (context.Wiring.Boxes.IsEmpty || context.Rule("free-conductor") is not { } rule)
        {
            return [];
        }

        var (own, least) = (context.Job.Practice.BoxTail ?? PracticeDefaults.BoxTail.Inches(), Length.FromInches(context.Limit(rule.Code, PlacingLimits.FreeConductor)));
        return context.Ask(rule, own >= least, () => $"{own} of cable are left at each box and {least} of free conductor are asked for. Leave more.", ["practice"]);
    }
}
