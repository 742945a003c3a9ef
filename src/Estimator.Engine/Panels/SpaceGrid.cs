using System.Collections.Immutable;

namespace Estimator.Engine.Panels;

/// <summary>The spaces of a panel while it is filled: odd numbers on the left, even ones on the right, rows in turn on leg A and leg B.</summary>
internal sealed class SpaceGrid(int spaces, int tandemSpaces)
{
    private readonly int[] _halves = new int[spaces + 1];

    internal int Spaces => spaces;

    internal static PanelLeg LegOf(int space) => (space - 1) / 2 % 2 == 0 ? PanelLeg.A : PanelLeg.B;

    /// <summary>Whether a breaker fits where it is stated.</summary>
    internal bool Takes(int space, int poles, bool half) => Of(space, poles).All(s => s >= 1 && s <= spaces && _halves[s] + (half ? 1 : 2) <= 2);

    /// <summary>The first place for a breaker from the top, or from the foot; null where none is.</summary>
    internal int? Column(int poles, bool fromBelow) => Enumerable.Range(1, spaces).Select(s => fromBelow ? spaces + 1 - s : s).Cast<int?>().FirstOrDefault(s => Takes(s!.Value, poles, half: false));

    /// <summary>A place for half of a tandem: beside another half first, then the last spaces, which take one.</summary>
    internal int? HalfFor(int poles) => Enumerable.Range(1, spaces).Where(s => Takes(s, poles, half: true))
        .OrderBy(s => Of(s, poles).All(x => _halves[x] == 1) ? 0 : TakesTandem(s) ? 1 : 2).ThenBy(s => s).Cast<int?>().FirstOrDefault();

    internal ImmutableArray<int> Take(int space, int poles, bool half)
    {
        var taken = Of(space, poles).ToImmutableArray();
        foreach (var s in taken)
        {
            _halves[s] += half ? 1 : 2;
        }

        return taken;
    }

    internal List<int> FreeOn(PanelLeg leg) => [.. Enumerable.Range(1, spaces).Where(s => _halves[s] == 0 && LegOf(s) == leg)];

    internal IEnumerable<int> TandemPlaces(IEnumerable<int> free) => free.Where(TakesTandem);

    internal int TandemsAmong(List<int> free) => free.Count(TakesTandem);

    private bool TakesTandem(int space) => space > spaces - tandemSpaces;

    private static IEnumerable<int> Of(int space, int poles) => Enumerable.Range(0, poles).Select(p => space + 2 * p);
}
