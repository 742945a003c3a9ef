namespace Estimator.Engine.House;

/// <summary>Which circuits a panel carries once the job is done.</summary>
public static class PanelCircuits
{
    /// <summary>Circuits of a panel that were there before and are there afterwards, those moved to it with them, each with its place in the job file.</summary>
    /// <param name="job">The job.</param>
    /// <param name="panel">The panel.</param>
    public static IEnumerable<(ExistingCircuit Circuit, string Path, bool Landed)> Of(Job job, Panel panel) =>
        job.Panels.SelectMany((p, i) => p.Circuits.Select((c, j) => (Circuit: c, Home: p, Path: $"$.panels[{i}].circuits[{j}]")))
            .Where(x => (x.Circuit.MovedTo ?? x.Home.Id) == panel.Id)
            .Select(x => (x.Circuit, x.Path, Landed: x.Circuit.MovedTo is not null || !panel.Existing));

    /// <summary>Halves of spaces that they take; a landed circuit has a breaker of its own.</summary>
    public static int Halves(Job job, Panel panel) => Of(job, panel).Sum(x => !x.Landed && (x.Circuit.Tandem || x.Circuit.NewTandem) ? x.Circuit.Poles : 2 * x.Circuit.Poles);
}
