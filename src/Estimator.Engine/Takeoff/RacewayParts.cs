using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Circuits;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Takeoff;

/// <summary>What a run of conduit asks for: pipe, its fittings and supports, bends, pull points, and the conductors in it.</summary>
/// <remarks>
/// One run, one pipe, of the smallest trade size that its conductors may fill. A grounding conductor is pulled along, though a metal raceway could serve.
/// Steel raceways need no plates over studs, 300.4(A)(1) exception. Source: NEC chapter 9 tables 1, 4 and 5; 250.122; 352.26, 352.30, 358.26, 358.30.
/// </remarks>
internal sealed class RacewayParts(LineCollecting lines, PageWriter page)
{
    internal void Add(Run run, Circuit circuit, string raceway) => Add(new PulledConductors(run.Path, run.Total, run.Cable.Size, run.Cable.Conductors, Grounding(run, circuit), circuit.Id), raceway);

    internal void Add(PulledConductors run, string raceway)
    {
        var way = page.Compute(Operation.Sum, "raceway-length", "Way of the pipe", Unit.Length, run.Path.Horizontal, run.Path.Vertical);
        if (FillOf(run) is not { } fill || RacewayRules.Sizes(raceway).FirstOrDefault(s => RoomIn(s, run).Value >= fill.Value) is not { } size)
        {
            lines.Add($"{raceway}-larger", way, run.Where);
            return;
        }

        var length = page.Compute(Operation.Because, "raceway-size", size.Label, Unit.Length, way, fill, RoomIn(size, run));
        lines.Add(size.Key, length, run.Where);
        lines.Add($"{size.Key}-connector", RacewayRules.Fittings.Read(page, Unit.Each), run.Where);
        lines.Add($"{size.Key}-coupling", Whole("raceway-couplings", "Couplings, one a stick", length, RacewayRules.Stick), run.Where);
        lines.Add($"{size.Key}-strap", page.Compute(
            Operation.Sum, "raceway-straps", "Straps of the run", Unit.Each, RacewayRules.EndSupports.Read(page, Unit.Each), Whole("raceway-straps", "Straps between the ends", AboveGround(run, length), RacewayRules.Support(raceway))), run.Where);
        var bends = page.Constant("Quarter bends of the way", QuarterBends.Of(run.Path), Unit.Each);
        lines.Add($"{size.Key}-bend", bends, run.Where);
        if (bends.Value > RacewayRules.QuarterBends.Number())
        {
            lines.Add($"{size.Key}-body", Whole("pull-points", "Conduit bodies where bends are too many for one pull", page.Compute(
                Operation.Difference, "pull-points", "Bends before the last", Unit.Each, bends, page.Constant("One", 1, Unit.Each)), RacewayRules.QuarterBends, Unit.Each), run.Where);
        }

        lines.Add("bored-hole", run.Path.Bores, run.Where);
        lines.Add(WireItem(run.Size), page.Compute(
            Operation.Product, "raceway-conductors", "Insulated conductors of the run", Unit.Length, run.Total, page.Constant("Conductors", run.Conductors, Unit.Each)), run.Where);
        lines.Add(WireItem(run.Ground), run.Total, run.Where);
    }

    private Fact AboveGround(PulledConductors run, Fact length) =>
        run.Path.Trench is { } trench ? page.Compute(Operation.Difference, "raceway-straps", "Pipe outside the trench", Unit.Length, length, trench) : length;

    // Areas in square inches.
    private Fact? FillOf(PulledConductors run)
    {
        if (RacewayRules.ConductorArea(run.Size) is not { } each || RacewayRules.ConductorArea(run.Ground) is not { } bare)
        {
            return null;
        }

        var insulated = page.Compute(
            Operation.Product, "raceway-fill", "Area of the insulated conductors", Unit.Factor, each.Read(page, Unit.Factor, "area_sq_in"), page.Constant("Conductors", run.Conductors, Unit.Each));
        return page.Compute(Operation.Sum, "raceway-fill", "Area of all conductors, square inches", Unit.Factor, insulated, bare.Read(page, Unit.Factor, "area_sq_in"));
    }

    private Fact RoomIn(RuleRow size, PulledConductors run) => page.Compute(
        Operation.PercentOf, "raceway-room", "Area that may be filled, square inches", Unit.Factor, size.Read(page, Unit.Factor, "area_sq_in"), RacewayRules.Fill(run.Conductors + 1).Read(page, Unit.Percent));

    // Never thicker than the circuit's own conductors, 250.122(A).
    private static WireSize Grounding(Run run, Circuit circuit)
    {
        var row = ServiceConductors.Grounding(circuit.BreakerA.Value);
        var size = row is null ? run.Cable.Size : WireSize.Parse(row.Text("copper")).Value;
        return size > run.Cable.Size ? run.Cable.Size : size;
    }

    private Fact Whole(string rule, string label, Fact length, RuleRow spacing, Unit unit = Unit.Length)
    {
        var each = unit is Unit.Length ? spacing.ReadFeet(page) : spacing.Read(page, unit);
        return page.Compute(Operation.RoundDown, rule, label, Unit.Each, page.Compute(Operation.Quotient, rule, label, Unit.Each, length, each), page.Constant("One", 1, Unit.Each));
    }

    private static string WireItem(WireSize size) => $"thhn-{size.ToString().Replace('/', '_')}";
}
