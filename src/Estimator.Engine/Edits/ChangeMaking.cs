using System.Text.Json.Nodes;
using Estimator.Engine.JobFiles;

namespace Estimator.Engine.Edits;

/// <summary>Makes one change in the tree of a job. What is so already is left so: two people may come to the same end.</summary>
internal static class ChangeMaking
{
    internal static JobProblem? Make(JobTree tree, JobChange change) => tree.Find(change.Target, out var place) ?? change switch
    {
        SetField set => Set(place, set),
        AddItem add => NoList(place) ?? Add(place, add),
        RemoveItem remove => NoList(place) ?? Remove(place, remove),
        _ => throw new ArgumentOutOfRangeException(nameof(change)),
    };

    private static JobProblem? Set(Place place, SetField set)
    {
        if (FieldPlaces.Find(place, set.Field, out var path, out var type, out var optional) is { } noField)
        {
            return noField;
        }

        JsonNode? after = null;
        if ((ValueText.Read(set.Before, type, path, out var before) ?? ValueText.Read(set.After, type, path, out after)) is { } unread)
        {
            return unread;
        }

        var owner = (JsonObject)place.Node;
        var (now, from, to) = (ValueText.Of(owner[set.Field]), ValueText.Of(before), ValueText.Of(after));
        if (now == to)
        {
            return null;
        }

        if (now != from)
        {
            return new JobProblem(JobTree.File, path, ValueText.Shortened(now), $"{ValueText.Shortened(from)}, which this edit was made on");
        }

        if (after is null)
        {
            owner.Remove(set.Field);
            return optional ? null : new JobProblem(JobTree.File, path, "nothing", ValueText.Words(type));
        }

        owner[set.Field] = after;
        return null;
    }

    private static JobProblem? NoList(Place place) => place.Field is { Shape: FieldShape.Items }
        ? null
        : new JobProblem(JobTree.File, place.Path, "an item added or removed", "a list whose items have ids as target, such as levels/L1/rooms");

    private static JobProblem? Add(Place place, AddItem add)
    {
        var (field, items) = (place.Field!, (JsonArray)place.Node);
        var path = $"{place.Path}['{ValueText.Shortened(add.Id)}']";
        if (ValueText.Read(add.Content, field.Inside, path, out var content) is { } unread)
        {
            return unread;
        }

        if (content is null || field.IdOf(content) != add.Id)
        {
            return new JobProblem(JobTree.File, path, content is null ? "nothing" : $"an item named '{ValueText.Shortened(field.IdOf(content))}'", $"an item named '{ValueText.Shortened(add.Id)}'");
        }

        var ids = field.IdsOf(items);
        if (ids.IndexOf(add.Id) is >= 0 and var there)
        {
            return ValueText.Of(items[there]) == ValueText.Of(content) ? null : new JobProblem(JobTree.File, path, "the id a second time", "an id that nothing else in this list has");
        }

        if (ItemOrder.IndexFor(ids, add) is not { } index)
        {
            return new JobProblem(JobTree.File, place.Path, $"'{ValueText.Shortened(add.Follows)}' and '{ValueText.Shortened(add.Precedes)}' as neighbours", $"a neighbour that the list has: {JobTree.Some(ids)}");
        }

        items.Insert(index, content);
        return null;
    }

    private static JobProblem? Remove(Place place, RemoveItem remove)
    {
        var (field, items) = (place.Field!, (JsonArray)place.Node);
        var index = field.IdsOf(items).IndexOf(remove.Id);
        if (index < 0)
        {
            return null;
        }

        var path = $"{place.Path}['{ValueText.Shortened(remove.Id)}']";
        if (ValueText.Read(remove.Content, field.Inside, path, out var content) is { } unread)
        {
            return unread;
        }

        if (ValueText.Of(items[index]) != ValueText.Of(content))
        {
            return new JobProblem(JobTree.File, path, "an item that was changed since", "the item as it was when it was removed: look at it again, then remove it");
        }

        items.RemoveAt(index);
        return null;
    }
}
