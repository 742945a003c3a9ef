using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>The way of a circuit's grounding conductor from the panel to its farthest box, and what an ohmmeter may read on it.</summary>
/// <remarks>
/// Every run brings a grounding conductor: as thick as the others to 10 AWG, beyond that by the breaker. What is read is less, since metal is colder than the
/// table's 75 C and grounds may meet in several boxes. Source: NEC chapter 9 table 8, 250.122; equal sizes to 10 AWG in cable: common practice, no source.
/// </remarks>
public sealed record GroundPath(int FarthestBox, Length Length, decimal Ohms)
{
    private const decimal FeetOfTheTable = 1000;

    /// <summary>The path of a circuit; null where it has no box.</summary>
    /// <param name="wiring">The wiring.</param>
    /// <param name="circuit">A circuit of it.</param>
    public static GroundPath? Of(WiringPlan wiring, Circuit circuit)
    {
        ArgumentNullException.ThrowIfNull(wiring);
        ArgumentNullException.ThrowIfNull(circuit);
        var common = circuit is { LeavesCommonHomeRun: true, SharesNeutralWith: { } other } ? wiring.Circuits[other].Runs : [];
        var lengths = Lengths([.. circuit.Runs.Concat(common).Select(r => wiring.Runs[r])]);
        var reached = circuit.Boxes.Where(lengths.ContainsKey).ToList();
        if (reached.Count == 0)
        {
            return null;
        }

        var far = reached.MaxBy(b => lengths[b]);
        var ohms = Length.FromNanometres(lengths[far]).ToFeet() * OhmsPerThousandFeet(circuit) / FeetOfTheTable;
        return new GroundPath(far, Length.FromNanometres(lengths[far]), decimal.Ceiling(ohms * 100) / 100);
    }

    private static decimal OhmsPerThousandFeet(Circuit circuit)
    {
        var size = circuit.Wire > WireSize.Awg10 && ServiceConductors.Grounding(circuit.BreakerA.Value) is { } row ? WireSize.Parse(row.Text("copper")).Value : circuit.Wire;
        return Conductors.For(size).Number(size > WireSize.Awg10 ? "dc_ohm_per_kft_cu_stranded_75C" : "dc_ohm_per_kft_cu_solid_75C");
    }

    // Shortest ways from the panel, nearest box first.
    private static Dictionary<int, long> Lengths(IReadOnlyList<Run> runs)
    {
        var (known, open) = (new Dictionary<int, long>(), new PriorityQueue<int, long>());
        open.Enqueue(-1, 0);
        while (open.TryDequeue(out var at, out var length))
        {
            if (!known.TryAdd(at, length))
            {
                continue;
            }

            foreach (var run in runs.Where(r => r.From == at || r.To == at))
            {
                open.Enqueue(run.From == at ? run.To : run.From, length + decimal.ToInt64(run.Total.Value));
            }
        }

        known.Remove(-1);
        return known;
    }
}
