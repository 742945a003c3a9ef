using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Loads;

/// <summary>Takes the first block of a load at one share and each further block at its own.</summary>
public static class BlockDemand
{
    /// <summary>The parts, block by block; blocks that the load does not reach are left out, the first stays.</summary>
    public static ImmutableArray<Fact> Parts(PageWriter page, Fact load, IReadOnlyList<RuleRow> blocks)
    {
        var parts = ImmutableArray.CreateBuilder<Fact>();
        foreach (var block in blocks)
        {
            var from = block.Read(page, Unit.VoltAmperes, "va_from");
            if (load.Value <= from.Value && parts.Count > 0)
            {
                break;
            }

            var upTo = block.Has("va_to") ? page.Compute(Operation.Minimum, "block-end", "End of the block", Unit.VoltAmperes, load, block.Read(page, Unit.VoltAmperes, "va_to")) : load;
            var inBlock = page.Compute(Operation.Difference, "block-load", "Load in the block", Unit.VoltAmperes, upTo, from);
            parts.Add(page.Compute(Operation.PercentOf, "block-demand", "Demand of the block", Unit.VoltAmperes, inBlock, block.Read(page, Unit.Percent, "percent")));
        }

        return parts.ToImmutable();
    }
}
