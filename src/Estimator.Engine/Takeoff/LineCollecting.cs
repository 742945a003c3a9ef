using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;

namespace Estimator.Engine.Takeoff;

/// <summary>Collects quantities by item while the wiring is walked.</summary>
internal sealed class LineCollecting(PartsCatalogue catalogue, PageWriter page)
{
    private readonly Dictionary<(string Item, bool Owner), (List<Fact> Parts, SortedSet<string> Where)> _parts = [];

    internal void Add(string item, Fact quantity, string where, bool owner = false)
    {
        if (!_parts.TryGetValue((item, owner), out var line))
        {
            line = ([], new SortedSet<string>(StringComparer.Ordinal));
            _parts.Add((item, owner), line);
        }

        line.Parts.Add(quantity);
        line.Where.Add(where);
    }

    /// <summary>Whether something of an item was counted.</summary>
    internal bool Has(string item) => _parts.Keys.Any(k => k.Item == item);

    internal void AddOne(string item, string label, string where, bool owner = false) => Add(item, page.Constant(label, 1, Unit.Each), where, owner);

    internal (ImmutableArray<TakeoffLine> Lines, ImmutableArray<Finding> Findings) Lines()
    {
        var order = catalogue.Items.Select((item, i) => (item.Id, i)).ToDictionary(x => x.Id, x => x.i, StringComparer.Ordinal);
        var lines = _parts.OrderBy(p => order.GetValueOrDefault(p.Key.Item, int.MaxValue)).ThenBy(p => p.Key.Item, StringComparer.Ordinal).ThenBy(p => p.Key.Owner)
            .Select(p => Line(p.Key.Item, p.Key.Owner, p.Value.Parts, [.. p.Value.Where])).ToImmutableArray();
        return (lines, [.. lines.Where(l => l.Category == "missing").Select(Missing)]);
    }

    private TakeoffLine Line(string id, bool owner, List<Fact> parts, ImmutableArray<string> where)
    {
        var item = catalogue.Find(id);
        var feet = parts.Count > 0 && parts[0].Unit is Unit.Length;
        var sum = page.Sum("takeoff-line", item?.Description ?? id, feet ? Unit.Length : Unit.Each, parts);
        var quantity = feet ? page.Compute(Operation.InFeet, "takeoff-feet", item?.Description ?? id, Unit.Feet, sum) : sum;
        return new TakeoffLine(id, item?.Category ?? "missing", item?.Description ?? $"{id} (not in the catalogue)", item?.Unit ?? (feet ? "foot" : "each"), quantity, owner, where);
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
