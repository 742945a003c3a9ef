using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring;
using Estimator.Engine.Wiring.Joints;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Takeoff;

/// <summary>Counts what joints and runs ask for: connectors of conductors, and the parts of each wiring method.</summary>
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

            if (box.Item?.Material is BoxMaterial.Metal)
            {
                lines.AddOne("ground-screw", "Screw that grounds a metal box, 250.148(C)", wiring.Circuits[box.Circuit].Id);
            }
        }

        var (cable, conduit) = (new CableParts(layout, wiring, lines, page), new RacewayParts(lines, page));
        foreach (var run in wiring.Runs)
        {
            var circuit = wiring.Circuits[run.Circuit];
            if (RunMethods.Raceway(run.Cable.Method) is { } raceway)
            {
                conduit.Add(run, circuit, raceway);
            }
            else
            {
                cable.Add(run, circuit.Id);
            }
        }
    }

    /// <summary>Conduit that would have to be fished, which it cannot.</summary>
    internal IEnumerable<Finding> Findings()
    {
        var rigid = wiring.Runs.Where(r => r.Fished && RunMethods.Raceway(r.Cable.Method) is not null).ToList();
        if (rigid.Count > 0)
        {
            yield return new Finding
            {
                Code = "conduit-in-finished-walls",
                Severity = Severity.Advice,
                Where = [.. rigid.Select(r => wiring.Boxes[r.To].Id).Distinct()],
                Text = FormattableString.Invariant($"{rigid.Count} runs of conduit end in finished walls, through which pipe can't be fished: open the walls, run it on the surface, or take flexible cable there. It is counted as if the walls were open."),
            };
        }
    }

    private void Connector(Joint joint, string circuit)
    {
        var size = joint.Function is ConductorFunction.Ground ? "ground" : TakeoffRules.ConnectorFor(joint.Size, joint.Conductors).Text("connector");
        lines.AddOne($"connector-{size}", "Connector", circuit);
    }
}
