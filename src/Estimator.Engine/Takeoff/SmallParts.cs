using Estimator.Engine.Explanations;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring;
using Estimator.Engine.Wiring.Joints;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Takeoff;

/// <summary>Counts connectors, clamps, staples, plates over studs and holes.</summary>
/// <remarks>A hole in the middle of a shallow stud is too near to both its faces, and each gets a plate. Source: NEC 300.4(A)(1).</remarks>
internal sealed class SmallParts(HouseLayout layout, WiringPlan wiring, LineCollecting lines, PageWriter page)
{
    internal void Add()
    {
        foreach (var box in wiring.Boxes)
        {
            foreach (var joint in box.Joints.Where(j => j.Connector))
            {
                Connector(joint, wiring.Circuits[box.Circuit].Id);
            }
        }

        foreach (var run in wiring.Runs)
        {
            Run(run, wiring.Circuits[run.Circuit].Id);
        }
    }

    private void Connector(Joint joint, string circuit)
    {
        var size = joint.Function is ConductorFunction.Ground ? "ground" : TakeoffRules.ConnectorFor(joint.Size, joint.Conductors).Text("connector");
        lines.AddOne($"connector-{size}", "Connector", circuit);
    }

    private void Run(Run run, string circuit)
    {
        if (run.Role is RunRole.HomeRun)
        {
            lines.AddOne("cable-clamp", "Clamp at the panel", circuit);
        }

        if (run.Fished)
        {
            return;
        }

        lines.Add("staple", Support.Fasteners(page, run.Path), circuit);
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
