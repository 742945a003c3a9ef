using Estimator.Engine;
using Estimator.Engine.Rules;

namespace Estimator.Documents.Crew;

/// <summary>A tool or a consumable that this job needs.</summary>
/// <param name="Consumable">Whether it is used up.</param>
/// <param name="Name">What it is.</param>
/// <param name="Count">How many.</param>
/// <param name="Unit">each, set, foot.</param>
/// <param name="Because">What in the job asks for it.</param>
/// <param name="Basis">On what that rests.</param>
public sealed record KitLine(bool Consumable, string Name, decimal Count, string Unit, string Because, string Basis)
{
    private static readonly string[] TakenOff = ["connector", "fastener", "consumable"];

    /// <summary>Tools first, then consumables; those of the takeoff with its quantities, whole ones.</summary>
    public static IEnumerable<KitLine> Of(JobEstimate estimate)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        var features = new JobFeatures(estimate);
        var table = CrewTable.Kit.Rows.Where(r => features.Count(r.Text("needs")) > 0).Select(r => Of(r, features)).ToList();
        return table.Where(l => !l.Consumable)
            .Concat(estimate.Takeoff.Lines.Where(l => TakenOff.Contains(l.Category)).Select(l => new KitLine(true, l.Description, decimal.Ceiling(l.Quantity.Value), l.Unit, "takeoff", "the quantity of the takeoff")))
            .Concat(table.Where(l => l.Consumable));
    }

    private static KitLine Of(RuleRow row, JobFeatures features)
    {
        var count = features.Count(row.Text("needs"));
        return new KitLine(row.Text("kind") == "consumable", row.Label, row.Has("per") ? decimal.Ceiling(count / row.Number("per")) : 1, row.Unit, features.Words(row.Text("needs")), CrewTable.Basis(row));
    }
}
