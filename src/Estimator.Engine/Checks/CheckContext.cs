using System.Collections.Immutable;
using Estimator.Engine.Controls;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Loads;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring;

namespace Estimator.Engine.Checks;

/// <summary>What a check reads, and how it words a finding.</summary>
internal sealed class CheckContext(HouseLayout layout, ControlPlan controls, WiringPlan wiring, LoadWorksheets loads, PageWriter page)
{
    // Codes of findings whose figure a local amendment may change, and of those that it may waive.
    private static readonly ImmutableArray<string> Figures = [ReceptacleSpacing.Code, RequiredCircuits.Code];
    private static readonly ImmutableArray<string> Waivers = [ProtectionChecks.GroundFault, ProtectionChecks.ArcFault];

    internal HouseLayout Layout => layout;

    internal ControlPlan Controls => controls;

    internal WiringPlan Wiring => wiring;

    internal LoadWorksheets Loads => loads;

    internal PageWriter Page => page;

    internal Job Job => layout.House.Job;

    internal CodeEdition Edition => Job.Code.Edition;

    /// <summary>The editions before 2026 were seen; a 2026 finding by an unchanged rule says that it was not.</summary>
    internal bool SeenInEdition => Edition is not CodeEdition.Nec2026;

    /// <summary>Whether a check follows a local amendment.</summary>
    internal static bool Judges(Amendment amendment) => amendment.Kind switch
    {
        AmendmentKind.Relax when Waivers.Contains(amendment.Rule) => true,
        AmendmentKind.Raise or AmendmentKind.Relax or AmendmentKind.Replace => amendment.Value is not null && Figures.Contains(amendment.Rule),
        _ => false,
    };

    /// <summary>The edition's figure, unless a local amendment put another in its place.</summary>
    internal decimal Limit(string code, RuleRow row) => Job.Code.Amendments.LastOrDefault(a => a.Rule == code && a.Value is not null && Judges(a))?.Value ?? row.Number();

    /// <summary>Whether a local amendment waives a rule.</summary>
    internal bool Waives(string code) => Job.Code.Amendments.Any(a => a.Rule == code && a.Kind is AmendmentKind.Relax && Judges(a));

    internal Finding Asked(string code, string article, FormattableString text, ImmutableArray<string> where, Severity severity = Severity.Mandatory, bool? verified = null) => new()
    {
        Code = code,
        Severity = severity,
        Where = where,
        Text = FormattableString.Invariant(text),
        Article = article,
        Edition = $"NEC {(int)Edition}",
        Verified = verified ?? SeenInEdition,
    };

    internal string RoomName(int room) => layout.House.Rooms[room].Source.Called();
}
