using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Wiring.Circuits;

namespace Estimator.Web.Circuits;

/// <summary>Arranges a panel's breakers: what is there keeps its order from the top, two poles first; new circuits follow on the leg with less load. Spaces stay visible.</summary>
/// <remarks>The order is a proposal for the directory; in an existing panel the real places count. Source: common practice, no source.</remarks>
public static class PanelArranging
{
    /// <summary>The spaces of a panel, top down.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="circuits">The new circuits on it, with their numbers.</param>
    public static ImmutableArray<PanelSpace> Of(Panel panel, IReadOnlyList<(Circuit Circuit, int Number)> circuits)
    {
        var rows = (panel.Spaces + 1) / 2;
        var taken = new bool[2, rows];
        var spaces = ImmutableArray.CreateBuilder<PanelSpace>();
        // By load first; circuits of receptacles count none, so breaker ratings decide between equals.
        var (legs, ratings) = (new decimal[2], new decimal[2]);
        int LighterLeg() => legs[0] != legs[1] ? (legs[0] < legs[1] ? 0 : 1) : ratings[0] <= ratings[1] ? 0 : 1;
        void Put(string name, decimal amperes, int poles, int number, decimal load)
        {
            foreach (var (row, left) in Places(rows, panel.Spaces, number == 0 || poles > 1 ? null : LighterLeg()))
            {
                var column = left ? 0 : 1;
                if (Enumerable.Range(row, poles).All(r => r < rows && !taken[column, r]))
                {
                    for (var r = row; r < row + poles; r++)
                    {
                        taken[column, r] = true;
                        if (number > 0)
                        {
                            legs[r % 2] += load / poles;
                            ratings[r % 2] += amperes;
                        }
                    }

                    spaces.Add(new PanelSpace(row, left, poles, name, amperes, number));
                    return;
                }
            }
        }

        foreach (var existing in panel.Circuits.Where(c => !c.Tandem || c.Poles > 1).OrderByDescending(c => c.Poles))
        {
            Put(existing.Name.Length > 0 ? existing.Name : existing.Id, existing.BreakerA.ToAmperes(), existing.Poles, 0, existing.LoadVa?.ToVoltAmperes() ?? 0);
        }

        foreach (var pair in panel.Circuits.Where(c => c.Tandem && c.Poles == 1).Chunk(2))
        {
            Put(string.Join(" / ", pair.Select(c => c.Name)), pair[0].BreakerA.ToAmperes(), 1, 0, pair.Sum(c => c.LoadVa?.ToVoltAmperes() ?? 0));
        }

        foreach (var (circuit, number) in circuits.OrderByDescending(c => c.Circuit.Poles))
        {
            Put(circuit.Name, circuit.BreakerA.Value, circuit.Poles, number, circuit.LoadVa.Value);
        }

        for (var row = 0; row < rows; row++)
        {
            for (var column = 0; column < 2; column++)
            {
                if (!taken[column, row] && 2 * row + column + 1 <= panel.Spaces)
                {
                    spaces.Add(new PanelSpace(row, column == 0, 1, "", 0, 0));
                }
            }
        }

        return [.. spaces.OrderBy(s => s.Number)];
    }

    // Rows alternate between the legs; a leg that is asked for is tried first.
    private static IEnumerable<(int Row, bool Left)> Places(int rows, int spaces, int? leg)
    {
        var all = Enumerable.Range(0, spaces).Select(i => (Row: i / 2, Left: i % 2 == 0)).Where(p => p.Row < rows);
        return leg is { } wanted ? all.OrderBy(p => p.Row % 2 == wanted ? 0 : 1).ThenBy(p => p.Row) : all;
    }
}
