using Estimator.Engine;
using Estimator.Engine.Explanations;
using Estimator.Web.Figures;

namespace Estimator.Web.Overview;

/// <summary>Figures that a reader of the whole job wants and no single stage makes, each with its explanation.</summary>
public sealed record JobFigures
{
    /// <summary>Number of the page of the explanation book; the engine's own are zero and above.</summary>
    public const int PageNumber = FigurePages.Overview;

    /// <summary>Rooms.</summary>
    public required Fact Rooms { get; init; }

    /// <summary>Floor area of all rooms.</summary>
    public required Fact FloorArea { get; init; }

    /// <summary>Circuits: home runs.</summary>
    public required Fact Circuits { get; init; }

    /// <summary>Feet of cable of all kinds.</summary>
    public required Fact CableFeet { get; init; }

    /// <summary>Feet of cable with three conductors.</summary>
    public required Fact ThreeConductorFeet { get; init; }

    /// <summary>Feet of cable for an opening.</summary>
    public required Fact CablePerOpening { get; init; }

    /// <summary>Paid hours for an opening: trips and setting up are in them, as they are in the band.</summary>
    public required Fact HoursPerOpening { get; init; }

    /// <summary>Boxes that are bought.</summary>
    public required Fact Boxes { get; init; }

    /// <summary>Plates.</summary>
    public required Fact Plates { get; init; }

    /// <summary>Breakers with arc-fault or ground-fault protection.</summary>
    public required Fact ProtectedBreakers { get; init; }

    /// <summary>What they cost.</summary>
    public required Fact ProtectedBreakerCost { get; init; }

    /// <summary>Labor as a share of direct cost, percent.</summary>
    public required Fact LaborShare { get; init; }

    /// <summary>Price less all cost.</summary>
    public required Fact Profit { get; init; }

    /// <summary>Sales tax, in cost or charged on, and permit.</summary>
    public required Fact TaxAndPermit { get; init; }

    /// <summary>What an hour of the crew sells for: its loaded cost with overhead, contingency and profit.</summary>
    public required Fact SellingHour { get; init; }

    /// <summary>Page of the explanation book.</summary>
    public required ExplanationPage Page { get; init; }

    /// <summary>The figures of an estimate.</summary>
    public static JobFigures Of(JobEstimate estimate)
    {
        var page = new PageWriter(PageNumber);
        var figures = new FigureDrawing(page, estimate);
        var cable = figures.Quantities("cable", "Cable of all kinds", Unit.Feet);
        var (labor, direct) = (figures.Bid("labor"), estimate.Bid.DirectTotal);
        var cost = page.Sum("all-cost", "Direct cost, overhead and contingency", Unit.Dollars, [direct, figures.Bid("overhead"), figures.Bid("contingency")]);
        return new JobFigures
        {
            Rooms = figures.Count("rooms", "Rooms", [.. estimate.House.Rooms.Select(r => r.AreaSquareFeet)]),
            FloorArea = page.Sum("floor-area", "Floor area", Unit.SquareFeet, [.. estimate.House.Rooms.Select(r => r.AreaSquareFeet)]),
            Circuits = figures.Count("home-runs", "Home runs", [.. estimate.Wiring.Circuits.Select(c => c.BreakerA)]),
            CableFeet = cable,
            ThreeConductorFeet = page.Sum("three-conductor", "Cable with three conductors", Unit.Feet, [.. estimate.Takeoff.Lines.Where(l => l.Category == "cable" && l.ItemId.EndsWith("-3", StringComparison.Ordinal)).Select(l => l.Quantity)]),
            CablePerOpening = figures.Per("cable-per-opening", "Cable an opening", Unit.Feet, cable, estimate.Takeoff.Openings),
            HoursPerOpening = figures.Per("hours-per-opening", "Paid hours an opening", Unit.Hours, estimate.Bid.PaidHours, estimate.Takeoff.Openings),
            Boxes = figures.Quantities("box", "Boxes", Unit.Each),
            Plates = figures.Quantities("plate", "Plates", Unit.Each),
            ProtectedBreakers = page.Sum("protected-breakers", "Breakers with arc-fault or ground-fault protection", Unit.Each, [.. estimate.Takeoff.Lines.Where(l => IsProtected(l.ItemId)).Select(l => l.Quantity)]),
            ProtectedBreakerCost = page.Sum("protected-breakers", "Cost of these breakers", Unit.Dollars,
                [.. estimate.Purchase.Lines.Where(l => IsProtected(l.ItemId) && l.Cost is not null).Select(l => new Fact(l.Cost!.Value.Value.ToDollars(), Unit.Dollars, l.Cost.Value.Node))]),
            LaborShare = figures.Share("labor-share", "Labor share of direct cost", labor, direct),
            Profit = page.Compute(Operation.Difference, "profit-earned", "Price less cost", Unit.Dollars, estimate.Bid.Price, cost),
            TaxAndPermit = page.Sum("tax-permit", "Sales tax, and permit", Unit.Dollars, [figures.Bid(estimate.Bid.Additions.Any(l => l.Id == "sales-tax") ? "sales-tax" : "material-tax"), figures.Bid("permit")]),
            SellingHour = figures.SellingHour(),
            Page = page.ToPage(),
        };
    }

    private static bool IsProtected(string item) => item.StartsWith("breaker-", StringComparison.Ordinal)
        && (item.EndsWith("arc_fault", StringComparison.Ordinal) || item.EndsWith("ground_fault", StringComparison.Ordinal) || item.EndsWith("dual_function", StringComparison.Ordinal));
}
