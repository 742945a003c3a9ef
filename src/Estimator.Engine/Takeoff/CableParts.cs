using Estimator.Engine.Explanations;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Takeoff;

/// <summary>What a run of cable asks for besides the cable: fasteners, connectors, plates over studs.</summary>
/// <remarks>A hole in the middle of a shallow stud is too near to both its faces, and each gets a plate. Source: NEC 300.4(A)(1), 330.30, 334.30.</remarks>
internal sealed class CableParts(HouseLayout layout, WiringPlan wiring, LineCollecting lines, PageWriter page)
{
    internal void Add(Run run, string circuit)
    {
        lines.Add(run.Cable.ItemId, run.Total, circuit);
        var armored = run.Cable.Method is WiringMethod.Mc;
        if (armored)
        {
            lines.Add("mc-connector", RacewayRules.Fittings.Read(page, Unit.Each), circuit);
            lines.Add("mc-bushing", RacewayRules.Fittings.Read(page, Unit.Each), circuit);
        }
        else if (run.Role is RunRole.HomeRun)
        {
            lines.AddOne("cable-clamp", "Clamp at the panel", circuit);
        }

        if (run.Fished)
        {
            return;
        }

        lines.Add(armored ? "mc-strap" : "staple", armored ? Support.OfArmored(page, run.Path) : Support.Fasteners(page, run.Path), circuit);
        lines.Add("bored-hole", run.Path.Bores, circuit);
        if (run.Path.Way is not RunWay.AlongWalls)
        {
            var drops = page.Constant("Drops through plates", Drops(run), Unit.Each);
            lines.Add("nail-plate", page.Compute(Operation.Quotient, "nail-plates", "Plates over the holes of drops", Unit.Each, drops, TakeoffRules.DropsPerPlate.Read(page, Unit.Each)), circuit);
        }
        else if (Edge(run) is var edge && TakeoffRules.EdgeDistance.ReadInches(page) is var least && edge.Value < least.Value)
        {
            var faces = page.Compute(Operation.Because, "nail-plates", "Faces that the hole is too near to", Unit.Each, page.Constant("Faces of a stud", 2, Unit.Each), edge, least);
            lines.Add("nail-plate", page.Compute(Operation.Product, "nail-plates", "Plates over holes in shallow studs", Unit.Each, run.Path.Bores, faces), circuit);
        }
    }

    private Fact Edge(Run run)
    {
        var level = layout.House.Levels[layout.House.Rooms[wiring.Boxes[run.To].Place.Room].Level];
        var beside = page.Compute(Operation.Difference, "hole-edge", "Wood beside the hole", Unit.Length, level.StudDepth, PracticeDefaults.StandardHole.ReadInches(page));
        return page.Compute(Operation.Quotient, "hole-edge", "Edge of a centred hole from the face", Unit.Length, beside, page.Constant("Both sides of the hole", 2));
    }

    private int Drops(Run run) =>
        (run.From < 0 || wiring.Boxes[run.From].Place.Mount is Mount.Wall ? 1 : 0) + (wiring.Boxes[run.To].Place.Mount is Mount.Wall ? 1 : 0);
}
