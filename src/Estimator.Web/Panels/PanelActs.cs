using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Web.Entries;
using Estimator.Web.Jobs;

namespace Estimator.Web.Panels;

/// <summary>What is done to the panels of a job, as functions from a job to the next one.</summary>
public static class PanelActs
{
    private const string CircuitForm = "a name, its breaker and poles, such as Dryer 30/2 or Hall lights 15";

    /// <summary>What people call a panel.</summary>
    public static string Name(Panel panel) => panel.Name.Length > 0 ? panel.Name : panel.Id;

    /// <summary>The job with a panel changed.</summary>
    public static Job With(Job job, string id, Func<Panel, Panel> change) => job with { Panels = [.. job.Panels.Select(p => p.Id == id ? change(p) : p)] };

    /// <summary>The job without a panel.</summary>
    public static Job Remove(Job job, string id) => job with { Panels = [.. job.Panels.Where(p => p.Id != id)] };

    /// <summary>The job with a subpanel fed from the first panel, of the smallest usual size and in its room until stated otherwise.</summary>
    public static Job Add(Job job, string id) => AddIn(job, id, job.Panels[0].Room);

    /// <summary>The job with a subpanel fed from the first panel, in a room; of the smallest usual size, or of the first that has a rating.</summary>
    public static Job AddIn(Job job, string id, string room, decimal least = 0)
    {
        var size = UpgradeRules.Subpanels.FirstOrDefault(s => s.Number("rating_a") >= least) ?? UpgradeRules.Subpanels[^1];
        return job with { Panels = job.Panels.Add(Hang(job, new Panel { Id = id, Name = "Subpanel", Room = room, RatingA = Current.FromAmperes(size.Number("rating_a")), Spaces = (int)size.Number("spaces"), FedFrom = job.Panels[0].Id }, room)) };
    }

    /// <summary>A panel on the first wall of a room, at its middle.</summary>
    public static Panel Hang(Job job, Panel panel, string room) => panel with
    {
        Room = room,
        At = null,
        Wall = new WallSpot(1, RoomActs.All(job).FirstOrDefault(r => r.Id == room) is { } found ? Half(found) : Length.Zero),
    };

    /// <summary>The job with a circuit of a panel changed.</summary>
    public static Job Circuit(Job job, string panelId, string id, Func<ExistingCircuit, ExistingCircuit> change) =>
        With(job, panelId, p => p with { Circuits = [.. p.Circuits.Select(c => c.Id == id ? change(c) : c)] });

    /// <summary>A circuit as it reads in a directory: Dryer 30/2 is a two-pole circuit of 30 A.</summary>
    public static Parsed<ExistingCircuit> Read(string text)
    {
        var at = text.LastIndexOf(' ');
        var (name, rating) = at < 0 ? ("", text) : (text[..at].Trim(), text[(at + 1)..]);
        var (amperes, poles) = rating.Split('/') is [var a, var p] ? (a, p) : (rating, "1");
        var (breaker, number) = (Typed.Number(amperes, CircuitForm, "A"), Typed.Whole(poles, CircuitForm));
        return breaker is { Ok: true, Value: { } rated } && number is { Ok: true, Value: { } counted }
            ? Parsed<ExistingCircuit>.Success(new ExistingCircuit { Id = Guid.NewGuid().ToString("N")[..8], Name = name, BreakerA = Current.FromAmperes(rated), Poles = counted })
            : Parsed<ExistingCircuit>.Failure(Typed.Wrong(text, CircuitForm));
    }

    private static Length Half(Room room)
    {
        var side = room.Size is { } size ? size.Width : (room.Corners[1].X - room.Corners[0].X).Abs() + (room.Corners[1].Y - room.Corners[0].Y).Abs();
        return Length.FromNanometres(side.ToNanometres() / 2);
    }
}
