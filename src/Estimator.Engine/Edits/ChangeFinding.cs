using System.Collections.Immutable;
using System.Text.Json.Nodes;

namespace Estimator.Engine.Edits;

/// <summary>Finds the changes that lead from one job to another: the fewest fields and items, by stable ids.</summary>
internal sealed class ChangeFinding
{
    private readonly ImmutableArray<JobChange>.Builder _changes = ImmutableArray.CreateBuilder<JobChange>();

    internal static ImmutableArray<JobChange> Between(JsonObject before, JsonObject after)
    {
        var finding = new ChangeFinding();
        finding.Fields(JobForm.Job, Target.Job, before, after);
        return finding._changes.ToImmutable();
    }

    private void Fields(JobForm form, Target target, JsonObject before, JsonObject after)
    {
        foreach (var field in form.Fields)
        {
            Field(field, target, before[field.Name], after[field.Name]);
        }
    }

    private void Field(FormField field, Target target, JsonNode? before, JsonNode? after)
    {
        switch (field.Shape)
        {
            case FieldShape.Section:
                Fields(JobForm.Of(field.Inside), target.Then(field.Name), (JsonObject)before!, (JsonObject)after!);
                break;
            case FieldShape.Map:
                Map(target.Then(field.Name), (JsonObject)before!, (JsonObject)after!);
                break;
            case FieldShape.Items when field.IdsOf((JsonArray)before!) is var a && field.IdsOf((JsonArray)after!) is var b && Unlike(a) && Unlike(b):
                Items(field, target.Then(field.Name), ((JsonArray)before!, a), ((JsonArray)after!, b));
                break;
            default:
                Value(target, field.Name, before, after);
                break;
        }
    }

    private void Value(Target target, string name, JsonNode? before, JsonNode? after)
    {
        var (from, to) = (ValueText.Of(before), ValueText.Of(after));
        if (from != to)
        {
            _changes.Add(new SetField(target, name, from, to));
        }
    }

    private void Map(Target target, JsonObject before, JsonObject after)
    {
        foreach (var key in before.Select(p => p.Key).Union(after.Select(p => p.Key), StringComparer.Ordinal))
        {
            Value(target, key, before[key], after[key]);
        }
    }

    // What goes is taken out from the right, what comes is put in from the left: so each item names neighbours that stand there at its turn, and turning the
    // edit round puts items in from the left again. An item that changed its place goes and comes.
    private void Items(FormField field, Target target, (JsonArray Items, List<string> Ids) before, (JsonArray Items, List<string> Ids) after)
    {
        var (ids, steady) = (before.Ids.ToList(), ItemOrder.Steady(before.Ids, after.Ids));
        for (var i = ids.Count - 1; i >= 0; i--)
        {
            if (!steady.Contains(ids[i]))
            {
                _changes.Add(new RemoveItem(target, ids[i], ids.ElementAtOrDefault(i - 1), ids.ElementAtOrDefault(i + 1), ValueText.Of(before.Items[i])!));
                ids.RemoveAt(i);
            }
        }

        for (var i = 0; i < after.Ids.Count; i++)
        {
            var id = after.Ids[i];
            if (steady.Contains(id))
            {
                Fields(JobForm.Of(field.Inside), target.Then(id), (JsonObject)before.Items[before.Ids.IndexOf(id)]!, (JsonObject)after.Items[i]!);
            }
            else
            {
                _changes.Add(new AddItem(target, id, ids.ElementAtOrDefault(i - 1), ids.ElementAtOrDefault(i), ValueText.Of(after.Items[i])!));
                ids.Insert(i, id);
            }
        }
    }

    private static bool Unlike(List<string> ids) => ids.Distinct(StringComparer.Ordinal).Count() == ids.Count;
}
