using System.Collections.Immutable;

namespace Estimator.Engine.Edits;

/// <summary>What one side of a merge touches, to be asked by target.</summary>
internal sealed class Touches
{
    private readonly ILookup<string, JobChange> _byTouched;
    private readonly HashSet<(Target, string)> _gone;
    private readonly HashSet<(Target, string)> _come;
    private readonly HashSet<(Target, string)> _openAfter;
    private readonly HashSet<(Target, string)> _openBefore;

    private Touches(ImmutableArray<JobChange> changes)
    {
        Changes = changes;
        Added = [.. changes.OfType<AddItem>()];
        _byTouched = changes.ToLookup(c => c.Touched.Text, StringComparer.Ordinal);
        _gone = [.. changes.OfType<RemoveItem>().Select(r => (r.Target, r.Id))];
        _come = [.. Added.Select(a => (a.Target, a.Id))];
        _openAfter = [.. Added.Select(a => (a.Target, a.Follows ?? ""))];
        _openBefore = [.. Added.Select(a => (a.Target, a.Precedes ?? ""))];
    }

    /// <summary>The changes; several of one field as one.</summary>
    internal ImmutableArray<JobChange> Changes { get; }

    internal ImmutableArray<AddItem> Added { get; }

    internal static Touches Of(ImmutableArray<JobChange> changes) => new([.. changes.OfType<SetField>().GroupBy(s => s.Touched)
        .Select(g => g.First() with { After = g.Last().After }).Where(s => s.Before != s.After), .. changes.Where(c => c is not SetField)]);

    /// <summary>The changes of a thing itself or of anything that it is inside.</summary>
    internal IEnumerable<JobChange> Meeting(Target touched) => _byTouched[touched.Text].Concat(Above(touched));

    /// <summary>The changes of what a thing is inside.</summary>
    internal IEnumerable<JobChange> Above(Target touched) => Owners(touched).SelectMany(o => _byTouched[o]);

    /// <summary>Whether an item that the other side adds can't be given its place any more, or not the same one in either order.</summary>
    internal bool TakesPlaceOf(AddItem added)
    {
        var (follows, precedes) = ((added.Target, added.Follows ?? ""), (added.Target, added.Precedes ?? ""));
        var (followsGone, precedesGone) = (_gone.Contains(follows), _gone.Contains(precedes));
        return (followsGone && (precedesGone || _come.Contains(follows) || _openBefore.Contains(precedes)))
            || (precedesGone && (_come.Contains(precedes) || _openAfter.Contains(follows)));
    }

    private static IEnumerable<string> Owners(Target touched)
    {
        var text = touched.Text;
        for (var i = text.LastIndexOf('/'); i > 0; i = text.LastIndexOf('/', i - 1))
        {
            yield return text[..i];
        }
    }
}
