using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase.Suppliers;

/// <summary>What each item costs at each supplier, all that is needed of it.</summary>
/// <param name="Items">Ids of the items.</param>
/// <param name="Terms">The suppliers.</param>
/// <param name="Costs">Cost by item, then by supplier; null where the supplier can't give all that is needed.</param>
public sealed record SupplyTable(ImmutableArray<string> Items, ImmutableArray<SupplierTerms> Terms, ImmutableArray<ImmutableArray<Money?>> Costs)
{
    /// <summary>Items that no supplier gives.</summary>
    public ImmutableArray<string> NobodyHas => [.. Items.Where((_, i) => Costs[i].All(c => c is null))];

    /// <summary>This table with some items alone.</summary>
    internal SupplyTable Where(Func<int, bool> keep) => new(
        [.. Items.Where((_, i) => keep(i))], Terms, [.. Costs.Where((_, i) => keep(i))]);
}
