using System.Collections.Immutable;

namespace Estimator.Engine.Wiring.Boxes;

/// <summary>Finds which conductors of a box are joined under a connector.</summary>
/// <remarks>
/// A lone conductor goes straight to its screw; a device whose conductor runs on, or that comes with wire leads, is spliced with a pigtail or its lead.
/// A receptacle with ground-fault protection that feeds onward uses its line and load screws instead. Source: common practice, no source.
/// </remarks>
internal static class Splicing
{
    internal static ImmutableArray<Splice> Of(BoxLoads loads, ImmutableArray<Terminal> terminals, bool lineAndLoad)
    {
        var splices = ImmutableArray.CreateBuilder<Splice>();
        var nets = loads.Entering.SelectMany(e => e.Append(Net.Ground)).Concat(terminals.Select(t => t.Net)).Distinct()
            .OrderBy(n => n.Function).ThenBy(n => n.Control).ThenBy(n => n.Number);
        foreach (var net in nets)
        {
            var entering = loads.Entering.Sum(e => net == Net.Ground ? 1 : e.Count(n => n == net));
            var screws = terminals.Count(t => t.Net == net && !t.Lead);
            var leads = terminals.Count(t => t.Net == net && t.Lead);
            if (Joined(net, entering, screws, leads, lineAndLoad))
            {
                splices.Add(new Splice(net.Function, loads.Size, entering + screws + leads));
            }
        }

        return splices.ToImmutable();
    }

    private static bool Joined(Net net, int entering, int screws, int leads, bool lineAndLoad)
    {
        if (lineAndLoad && net.Function is ConductorFunction.Hot or ConductorFunction.Neutral && entering <= 2 && leads == 0)
        {
            return false;
        }

        return entering > 0 && (leads > 0 || entering + screws > 2 || (entering == 2 && screws == 0));
    }
}
