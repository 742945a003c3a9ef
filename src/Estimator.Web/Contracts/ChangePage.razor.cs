using Estimator.Data.Contracts;
using Estimator.Engine.Contracts;

namespace Estimator.Web.Contracts;

/// <summary>A change order: what it changes, its document, and what happened to it.</summary>
public sealed partial class ChangePage
{
    private StoredChange? Stored => Contract?.Changes.FirstOrDefault(c => c.Number == Number);

    /// <summary>Address of a change order.</summary>
    public static string Address(string jobId, int number) => FormattableString.Invariant($"/jobs/{Uri.EscapeDataString(jobId)}/contract/changes/{number}");

    private static IEnumerable<(DateOnly On, string What, string Who)> Happened(StoredChange stored) =>
        stored.Order.Events.Select((e, i) => (e.On, e.Text.Length > 0 ? $"{e.Kind}, {e.Text}" : $"{e.Kind}", stored.Noted[i]));

    private async Task NoteAsync(ChangeEventKind kind) => await TakeAsync(await Contracts.NoteAsync(Contract!, Stored!, new ChangeEvent(kind, On) { Text = Text }));
}
