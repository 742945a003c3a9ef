using System.Collections.Immutable;
using Estimator.Engine.Controls;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.Layout;
using Estimator.Engine.Loads;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring;

namespace Estimator.Engine.Checks;

/// <summary>Judges a wired house by the edition and its local amendments. What is not judged is listed as unjudged.</summary>
public static class HouseChecks
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = 3;

    private static readonly ImmutableArray<Func<CheckContext, IEnumerable<Finding>>> All =
    [
        ReceptacleSpacing.Judge, CounterReceptacles.Judge, CounterHeights.Judge, RequiredReceptacles.Judge, BathReceptacles.Judge, OutdoorReceptacles.Judge,
        ServiceReceptacles.Judge, ReceptacleTypes.Judge, ProtectionChecks.Judge, PermitDates.Judge, ChargingOutlets.Judge, RequiredCircuits.Judge,
        RequiredCircuitOutlets.Judge, GeneralCircuits.Judge, PermissibleLoads.Judge, EquipmentCircuits.Judge, ConductorToBreaker.Judge, BoxFillCheck.Judge,
        VoltageDropCheck.Judge, FeederDrop.Judge, PanelSpaces.Judge, PanelPlaces.Judge, LightingOutlets.Judge, StairControls.Judge, SwitchPlaces.Judge, SmokeAlarms.Judge,
        ServiceRating.Judge, ServiceDisconnects.Judge, Disconnects.Judge, CeilingBoxes.Judge, ClosetLights.Judge, OldWiring.Judge,
        BuildingsApart.Judge, MadeByRule.Judge, CableBundles.Judge,
    ];

    /// <summary>The findings of all checks.</summary>
    public static CheckResult Judge(HouseLayout layout, ControlPlan controls, WiringPlan wiring, LoadWorksheets loads)
    {
        var page = new PageWriter(PageNumber);
        var context = new CheckContext(layout, controls, wiring, loads, page);
        ImmutableArray<Finding> findings = [.. All.SelectMany(check => check(context)).Concat(Amendments(context)).Concat(Unjudged(context)).OrderBy(f => f.Severity)];
        return new CheckResult(findings, context.Applied, page.ToPage());
    }

    private static IEnumerable<Finding> Amendments(CheckContext context) =>
        context.Job.Code.Amendments.Where(a => !LocalRules.Follows(a)).Select(a => new Finding
        {
            Code = "local-rule",
            Severity = Severity.Unjudged,
            Where = [a.Id],
            Text = FormattableString.Invariant($"Local rule {a.Rule}: {a.Text} This program can't judge it; the inspector does."),
        });

    private static IEnumerable<Finding> Unjudged(CheckContext context) => UnjudgedRules.All.Select(r => new Finding
    {
        Code = "unjudged",
        Severity = Severity.Unjudged,
        Text = FormattableString.Invariant($"{r.Label}: not judged here; check it against the code and with the inspector."),
        Article = r.Text("article"),
        Edition = $"NEC {(int)context.Edition}",
        Verified = false,
    });
}
