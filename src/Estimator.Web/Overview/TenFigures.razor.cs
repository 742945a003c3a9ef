using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Panels;
using Estimator.Engine.Pricing;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Overview;

/// <summary>The ten figures that an estimator looks at first, each with its band and its reason.</summary>
public sealed partial class TenFigures
{
    private readonly JobBand _profit = JobBand.Of("profit");
    private readonly JobBand _oneMore = JobBand.Of("one_more_cable");
    private PricedJob? _shown;
    private TenthFigure? _tenth;
    private bool _trying;
    private bool _oldWork;
    private JobBand _cable = JobBand.Of("cable", false);
    private JobBand _hours = JobBand.Of("hours", false);
    private JobBand _share = JobBand.Of("labor", false);
    private int _spacesUsed;
    private int _spacesFree;
    private int _ownHousing;
    private int _boxes;
    private int _protectedCircuits;
    private int _outside;

    /// <summary>The job, worked out.</summary>
    [Parameter, EditorRequired]
    public PricedJob Priced { get; set; } = default!;

    private Fact Labor => Line("labor");

    private BidLine? TaxLine => Priced.Estimate.Bid.DirectCost.Concat(Priced.Estimate.Bid.Additions).FirstOrDefault(l => l.Id is "material-tax" or "sales-tax");

    private decimal Tax => TaxLine?.Amount.Value ?? 0;

    private decimal Permit => Line("permit").Value;

    private string HomeRunReason
    {
        get
        {
            var kinds = Priced.Estimate.Wiring.Circuits.GroupBy(c => c.Kind).OrderBy(g => g.Key).Select(g => $"{American.Number(g.Count())} {KindWords(g.Key)}");
            return $"{string.Join(", ", kinds)}. {American.Count(Math.Max(0, _spacesFree - _spacesUsed), "space")} free after them.";
        }
    }

    private string BreakerReason
    {
        get
        {
            var rank = Priced.Estimate.Purchase.Lines.Count(l => l.Cost is { } cost && cost.Value.ToDollars() > Priced.Figures.ProtectedBreakerCost.Value) + 1;
            return Priced.Figures.ProtectedBreakers.Value == 0 ? "No circuit of this job asks for it." : rank == 1 ? "The largest material line." : $"Number {American.Number(rank)} among the material lines.";
        }
    }

    private string TaxReason
    {
        get
        {
            var words = Tax == 0 ? "No sales tax is stated." : TaxLine is { Id: "sales-tax" } ? $"Tax {American.WholeDollars(Tax)} charged on to the customer, {(Priced.Job.Bid.SalesTaxOn is SalesTaxOn.WholePrice ? "on the whole price" : "on what material is charged at")}." : $"Tax {American.WholeDollars(Tax)} on material only, inside cost.";
            return $"{words} Permit {American.WholeDollars(Permit)}. {(Priced.Job.Bid.Travel is TravelBy.Hours ? "Drive and set-up time are counted as hours." : "Drive and set-up time is in the productive share of paid hours.")}";
        }
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (ReferenceEquals(_shown, Priced))
        {
            return;
        }

        _shown = Priced;
        Measure();
        _trying = true;
        var tenth = await TenthFigure.OfAsync(Priced);
        if (ReferenceEquals(_shown, Priced))
        {
            (_tenth, _trying) = (tenth, false);
        }
    }

    private void Measure()
    {
        var wiring = Priced.Estimate.Wiring;
        _oldWork = JobBand.OldWork(Priced.Job);
        (_cable, _hours, _share) = (JobBand.Of("cable", _oldWork), JobBand.Of("hours", _oldWork), JobBand.Of("labor", _oldWork));
        _spacesUsed = wiring.Circuits.Sum(c => c.Poles);
        _spacesFree = Priced.Job.Panels.Sum(p => PanelRoom.FreeSpaces(Priced.Job, p));
        _ownHousing = wiring.Boxes.Count(b => b.Use is BoxUse.OwnHousing);
        _boxes = wiring.Boxes.Count(b => b.Item is not null);
        _protectedCircuits = wiring.Circuits.Count(c => c.Protection is not Protection.Plain);
        var figures = Priced.Figures;
        _outside = new[]
        {
            _spacesUsed <= _spacesFree, figures.Boxes.Value == _boxes, _cable.Holds(figures.CablePerOpening.Value), _hours.Holds(figures.HoursPerOpening.Value),
            _share.Holds(figures.LaborShare.Value), _profit.Holds(Priced.Estimate.Bid.MarginPercent.Value),
        }.Count(inside => !inside);
    }

    private Fact Line(string id) => Priced.Estimate.Bid.DirectCost.Concat(Priced.Estimate.Bid.Additions).Where(l => l.Id == id).Select(l => l.Amount).FirstOrDefault();

    private string Hours(WorkPhase phase) => Priced.Estimate.Labor.ByPhase.TryGetValue(phase, out var hours) ? $"{American.Fixed(hours.Value, 1)} h" : "none";

    private string HoursReason => $"{American.Fixed(Priced.Estimate.Labor.Total.Value, 1)} h of work, {Hours(WorkPhase.RoughIn)} of it rough-in and {Hours(WorkPhase.TrimOut)} trim-out; {American.Fixed(Priced.Estimate.Bid.PaidHours.Value, 1)} h paid, trips and setting up in them.{(_hours.Holds(Priced.Figures.HoursPerOpening.Value) ? "" : $" {OutsideReasons.Hours(Priced.Estimate)}")}";

    private static string TenthReason(TenthFigure tenth)
    {
        var circuits = tenth.Change.Circuits == 0 ? "no new circuit" : "with a new circuit";
        return $"{American.Number(tenth.Change.CableFeet.Value)} ft of cable and {American.Number(tenth.Change.Hours.Value, 2)} h in {tenth.Room}; {circuits}.";
    }

    private static string KindWords(CircuitKind kind) => kind switch
    {
        CircuitKind.SmallAppliance => "small-appliance",
        CircuitKind.Laundry => "laundry",
        CircuitKind.Bathroom => "bath",
        CircuitKind.Garage => "garage",
        CircuitKind.Individual => "individual",
        CircuitKind.Receptacles => "for receptacles",
        CircuitKind.Lighting => "for lights",
        CircuitKind.General => "general",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind of circuit."),
    };
}
