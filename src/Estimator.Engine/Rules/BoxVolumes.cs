using System.Collections.Immutable;

namespace Estimator.Engine.Rules;

/// <summary>Volumes of metal boxes.</summary>
/// <remarks>Source: NEC table 314.16(A).</remarks>
public static class BoxVolumes
{
    /// <summary>The boxes in the order of the table.</summary>
    public static ImmutableArray<RuleRow> All => RuleTables.Of("box_volumes").Rows;

    /// <summary>The box of a trade size and type, such as 4 x 1-1/2 and square; round and octagonal are one type.</summary>
    public static RuleRow? Find(string name)
    {
        var words = name.Trim().ToLowerInvariant();
        return All.FirstOrDefault(r => words.StartsWith(r.Text("trade_size_in").ToLowerInvariant(), StringComparison.Ordinal)
            && words[r.Text("trade_size_in").Length..].Trim() is var type
            && r.Text("box_type").ToLowerInvariant() is var own && (type == own || own.Split('/').Contains(type)));
    }
}
