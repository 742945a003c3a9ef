namespace Estimator.Engine.Edits;

/// <summary>Where items stand in a list.</summary>
internal static class ItemOrder
{
    /// <summary>The index at which an item enters; null where both its neighbours are gone.</summary>
    /// <remarks>
    /// When the edit was made its neighbours stood side by side, so whatever is between them now was put there by others. It is ordered with the new item by id: two
    /// rows of items that enter the same gap merge alike whichever comes first, as two sorted lists do, smaller head first.
    /// </remarks>
    internal static int? IndexFor(List<string> ids, AddItem add)
    {
        var after = add.Follows is null ? 0 : ids.IndexOf(add.Follows) + 1;
        var before = add.Precedes is null ? ids.Count : ids.IndexOf(add.Precedes);
        var (followsGone, precedesGone) = (add.Follows is not null && after == 0, before < 0);
        if (followsGone || precedesGone)
        {
            return followsGone ? (precedesGone ? null : before) : after;
        }

        var index = after;
        while (index < before && string.CompareOrdinal(ids[index], add.Id) < 0)
        {
            index++;
        }

        return index;
    }

    /// <summary>The largest set of items that may stay where they are when one order becomes another: a longest rising row of their places.</summary>
    internal static HashSet<string> Steady(IEnumerable<string> before, IReadOnlyList<string> after)
    {
        var place = after.Select((id, i) => (id, i)).ToDictionary(x => x.id, x => x.i, StringComparer.Ordinal);
        var row = before.Where(place.ContainsKey).ToList();
        var ends = new List<int>();
        var previous = new int[row.Count];
        for (var i = 0; i < row.Count; i++)
        {
            var at = ends.FindIndex(e => place[row[e]] > place[row[i]]);
            previous[i] = at switch { 0 => -1, < 0 => ends.Count == 0 ? -1 : ends[^1], _ => ends[at - 1] };
            if (at < 0)
            {
                ends.Add(i);
            }
            else
            {
                ends[at] = i;
            }
        }

        var steady = new HashSet<string>(StringComparer.Ordinal);
        for (var i = ends.Count == 0 ? -1 : ends[^1]; i >= 0; i = previous[i])
        {
            steady.Add(row[i]);
        }

        return steady;
    }
}
