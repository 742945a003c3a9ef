using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Takeoff;

/// <summary>Collects quantities by item while the wiring is walked.</summary>
internal sealed class LineCollecting(PartsCatalogue catalogue, PageWriter page)
{
    private readonly Dictionary<(string Item, bool Owner), List<(Fact Part, string Where)>> _parts = [];

    internal void Add(string item, Fact quantity, string where, bool owner = false)
    {
        if (!_parts.TryGetValue((item, owner), out var line))
        {
            line = [];
            _parts.Add((item, owner), line);
        }

        line.Add((quantity, where));
    }

    /// <summary>Whether something of an item was counted.</summary>
    internal bool Has(string item) => _parts.Keys.Any(k => k.Item == item);

    internal void AddOne(string item, string label, string where, bool owner = false) => Add(item, page.Constant(label, 1, Unit.Each), where, owner);

    internal (ImmutableArray<TakeoffLine> Lines, ImmutableArray<Finding> Findings) Lines()
    {
        var order = catalogue.Items.Select((item, i) => (item.Id, i)).ToDictionary(x => x.Id, x => x.i, StringComparer.Ordinal);
        var lines = _parts.OrderBy(p => order.GetValueOrDefault(p.Key.Item, int.MaxValue)).ThenBy(p => p.Key.Item, StringComparer.Ordinal).ThenBy(p => p.Key.Owner)
            .Select(p => Line(p.Key.Item, p.Key.Owner, p.Value)).ToImmutableArray();
        return (lines, [.. lines.Where(l => l.Category == "missing").Select(Missing)]);
    }

    private TakeoffLine Line(string id, bool owner, List<(Fact Part, string Where)> counted)
    {
        var item = catalogue.Find(id);
        List<Fact> parts = [.. counted.Select(c => c.Part)];
        var feet = parts.Count > 0 && parts[0].Unit is Unit.Length;
        var sum = page.Sum("takeoff-line", item?.Description ?? id, feet ? Unit.Length : Unit.Each, parts);
        var quantity = feet ? page.Compute(Operation.InFeet, "takeoff-feet", item?.Description ?? id, Unit.Feet, sum) : sum;
        var byPlace = counted.GroupBy(c => c.Where, StringComparer.Ordinal).ToImmutableSortedDictionary(g => g.Key, g => feet ? Length.FromNanometres(g.Sum(c => decimal.ToInt64(c.Part.Value))).ToFeet() : g.Sum(c => c.Part.Value), StringComparer.Ordinal);
        return new TakeoffLine(id, item?.Category ?? "missing", item?.Description ?? $"{id} (not in the catalogue)", item?.Unit ?? (feet ? "foot" : "each"), quantity, owner, [.. byPlace.Keys]) { ByPlace = byPlace };
    }

    private static Finding Missing(TakeoffLine line) => new()
    {
        Code = "item-not-in-catalogue",
        Severity = Severity.Advice,
        Where = [.. line.Where],
        Text = FormattableString.Invariant($"The job needs {line.Quantity.Value:0.##} of {line.ItemId}, which the catalogue does not have: add it to items.csv with labor and offers. It is priced nowhere."),
        Figures = [line.Quantity.Node],
    };
}
