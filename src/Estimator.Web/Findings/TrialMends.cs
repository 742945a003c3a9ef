using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Web.Jobs;
using Estimator.Web.Panels;

namespace Estimator.Web.Findings;

/// <summary>Mends by a figure: the first of several, in the order of what they change the least, that ends the finding.</summary>
internal static class TrialMends
{
    private const int FewestOutlets = 1;

    private const decimal DropStep = 0.5m;

    internal static Mend? For(Finding finding, Job job) => finding.Code switch
    {
        "general-circuits" => new Mend("Put fewer outlets on a circuit", "Fewer outlets on a general circuit", j => Trial.First(j, finding, FewerOutlets(j))),
        "box-fill" => new Mend("Wire it another way", "Feeds that leave more room in the box", j => Trial.First(j, finding, OtherFeeds(j))),
        "drop-together" => new Mend("Take thicker cable", "Thicker cable where the voltage drop passes what is advised", j => Trial.First(
            j, finding, Drops().Select(d => j with { Practice = j.Practice with { BranchVoltageDropPercent = Percent.FromHundredths(d) } }))),
        "feeder-load" or "feeder-drop" => Panel(finding, job) is { } fed
            ? new Mend("Take a larger feeder", $"{PanelActs.Name(fed)}: a larger feeder", j => Trial.First(j, finding, Larger(fed, FeederSizes).Select(a => PanelActs.With(j, fed.Id, p => p with { RatingA = a }))))
            : null,
        "service-load" => Panel(finding, job) is { Existing: false } main
            ? new Mend("Take a larger service", $"{PanelActs.Name(main)}: a larger service", j => Trial.First(j, finding, Larger(main, ServiceSizes).Select(a => Served(j, main, a))))
            : null,
        "required-circuits" => RoomActs.All(job).FirstOrDefault(r => r.Kind is RoomKind.Kitchen && finding.Where.Contains(r.Id)) is { } kitchen
            ? new Mend("Place counter receptacle", $"{RoomActs.Name(kitchen)}: one more counter receptacle", j => RoomActs.Add(j, kitchen.Id, DeviceKind.DuplexReceptacle, ServedPlace.Counter))
            : null,
        _ => null,
    };

    // From what is advised down.
    private static IEnumerable<decimal> Drops()
    {
        for (var drop = PracticeDefaults.BranchVoltageDropPercent.Number(); drop > 0; drop -= DropStep)
        {
            yield return drop;
        }
    }

    private static IEnumerable<Job> FewerOutlets(Job job)
    {
        for (var most = (job.Practice.OutletsPer20A ?? (int)PracticeDefaults.OutletsPer20A.Number()) - 1; most >= FewestOutlets; most--)
        {
            yield return job with { Practice = job.Practice with { OutletsPer20A = most, OutletsPer15A = Math.Min(most, job.Practice.OutletsPer15A ?? (int)PracticeDefaults.OutletsPer15A.Number()) } };
        }
    }

    private static IEnumerable<Job> OtherFeeds(Job job) =>
    [
        job with { Practice = job.Practice with { ControlFeed = ControlFeed.AtLight } },
        job with { Practice = job.Practice with { ControlFeed = ControlFeed.AtSwitch } },
        job with { Practice = job.Practice with { GroundFaultBy = GroundFaultBy.Breaker } },
        job with { Practice = job.Practice with { ControlFeed = ControlFeed.AtLight, GroundFaultBy = GroundFaultBy.Breaker } },
        .. FewerOutlets(job),
    ];

    private static IEnumerable<decimal> FeederSizes => UpgradeRules.Subpanels.Select(s => s.Number("rating_a"));

    private static IEnumerable<decimal> ServiceSizes => ServiceConductors.Ratings;

    private static IEnumerable<Current> Larger(Panel panel, IEnumerable<decimal> sizes) => sizes.Order().Where(a => a > panel.RatingA.ToAmperes()).Select(Current.FromAmperes);

    private static Job Served(Job job, Panel main, Current rating) =>
        PanelActs.With(job, main.Id, p => p with { RatingA = rating }) is var larger && larger.Service is { RatingA: not null } work ? larger with { Service = work with { RatingA = rating } } : larger;

    private static Panel? Panel(Finding finding, Job job) => job.Panels.FirstOrDefault(p => finding.Where.Contains(p.Id));
}
