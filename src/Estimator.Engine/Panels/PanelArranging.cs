using Estimator.Engine.Explanations;

namespace Estimator.Engine.Panels;

/// <summary>Puts every breaker of a panel into a space, and the new one-pole circuits on the legs so that these are as even as can be.</summary>
/// <remarks>
/// Two-pole breakers take a space of each leg wherever they stand, so only the one-pole ones decide the balance. Tandems are put only where spaces run
/// out. Spaces that take a tandem are taken to be the last ones, common practice, no source: the panel's label decides.
/// </remarks>
public sealed class PanelArranging
{
    private readonly PageWriter _page;
    private readonly string _panelId;
    private readonly SpaceGrid _grid;
    private readonly List<ScheduledBreaker> _placed = [];
    private readonly List<BreakerLoad> _unplaced = [];
    private readonly List<string> _notes = [];

    private PanelArranging(PageWriter page, string panelId, int spaces, int tandemSpaces) => (_page, _panelId, _grid) = (page, panelId, new SpaceGrid(spaces, tandemSpaces));

    /// <summary>The schedule of a panel.</summary>
    /// <param name="page">Where its figures are explained.</param>
    /// <param name="panelId">The panel.</param>
    /// <param name="spaces">Its spaces.</param>
    /// <param name="tandemSpaces">How many of them take a tandem.</param>
    /// <param name="breakers">What wants a place, in the order of the directory.</param>
    public static PanelSchedule Arrange(PageWriter page, string panelId, int spaces, int tandemSpaces, IReadOnlyList<BreakerLoad> breakers) =>
        new PanelArranging(page, panelId, spaces, tandemSpaces).Arrange(breakers);

    private PanelSchedule Arrange(IReadOnlyList<BreakerLoad> breakers)
    {
        var existing = breakers.Where(b => b.Origin is BreakerOrigin.Existing).ToList();
        foreach (var breaker in existing.Where(b => b.Space is not null))
        {
            Keep(breaker);
        }

        var fresh = breakers.Where(b => b.Origin is not BreakerOrigin.Existing).ToList();
        var unread = existing.Where(b => !IsPlaced(b) && !b.Tandem).ToList();
        PutAll(unread.Where(b => b.Poles > 1), fromBelow: false);
        // Where nobody read the door, the new two-pole breakers are thought at the foot of the panel: one-pole ones make way for them.
        PutAll(fresh.Where(b => b.Poles > 1), fromBelow: unread.Count > 0);
        PutAll(unread.Where(b => b.Poles == 1), fromBelow: false);
        foreach (var breaker in existing.Where(b => !IsPlaced(b) && b.Tandem))
        {
            Put(breaker, _grid.HalfFor(breaker.Poles), half: true);
        }

        var bound = Divide([.. fresh.Where(b => b.Poles == 1)]);
        Say(existing);
        return ToSchedule(bound);
    }

    private void PutAll(IEnumerable<BreakerLoad> breakers, bool fromBelow)
    {
        foreach (var breaker in breakers)
        {
            Put(breaker, _grid.Column(breaker.Poles, fromBelow), half: false);
        }
    }

    private bool IsPlaced(BreakerLoad breaker) => _placed.Any(p => ReferenceEquals(p.Breaker, breaker));

    private void Keep(BreakerLoad breaker)
    {
        if (_grid.Takes(breaker.Space!.Value, breaker.Poles, breaker.Tandem))
        {
            Put(breaker, breaker.Space, breaker.Tandem);
        }
        else
        {
            _notes.Add($"{breaker.Name} is stated in space {breaker.Space}, where another breaker stands or the panel ends: read the door again.");
        }
    }

    private void Put(BreakerLoad breaker, int? space, bool half)
    {
        if (space is not { } first)
        {
            _unplaced.Add(breaker);
            return;
        }

        var spaces = _grid.Take(first, breaker.Poles, half);
        _placed.Add(new ScheduledBreaker(breaker, spaces, breaker.Poles > 1 ? PanelLeg.Both : SpaceGrid.LegOf(first), half));
    }

    private long Divide(List<BreakerLoad> breakers)
    {
        var (a, b) = (_grid.FreeOn(PanelLeg.A), _grid.FreeOn(PanelLeg.B));
        var most = a.Count + b.Count + _grid.TandemsAmong(a) + _grid.TandemsAmong(b);
        _unplaced.AddRange(breakers.Skip(most));
        var loads = breakers.Take(most).ToList();
        // Where spaces run out, so many tandems stand on either leg as its spaces take.
        var doubled = Math.Max(0, loads.Count - a.Count - b.Count);
        var leastOnA = doubled == 0 ? Math.Max(0, loads.Count - b.Count) : a.Count + Math.Max(0, doubled - _grid.TandemsAmong(b));
        var mostOnA = a.Count + Math.Min(doubled, _grid.TandemsAmong(a));
        var split = LegBalancing.Split([.. loads.Select(l => decimal.ToInt64(l.LoadVa.Value))], Difference(), leastOnA, mostOnA);
        Fill(a, [.. loads.Where((_, i) => split.OnA[i])]);
        Fill(b, [.. loads.Where((_, i) => !split.OnA[i])]);
        return split.LowerBoundVa;
    }

    private long Difference() => decimal.ToInt64(_placed.Sum(p => p.Leg is PanelLeg.A ? p.Breaker.LoadVa.Value : p.Leg is PanelLeg.B ? -p.Breaker.LoadVa.Value : 0));

    private void Fill(List<int> spaces, List<BreakerLoad> breakers)
    {
        var doubled = breakers.Count - spaces.Count;
        var tandems = _grid.TandemPlaces(spaces).TakeLast(Math.Max(0, doubled)).ToHashSet();
        var places = spaces.SelectMany(s => tandems.Contains(s) ? new[] { s, s } : [s]).ToList();
        foreach (var (breaker, space) in breakers.Zip(places))
        {
            Put(breaker, space, tandems.Contains(space));
        }
    }

    private void Say(List<BreakerLoad> existing)
    {
        if (existing.Any(e => e.Space is null))
        {
            _notes.Add("Breakers that are there already without a stated space stand in the order of the directory: read the real places on the door.");
        }

        if (_placed.Any(p => p.Half && p.Breaker.Origin is BreakerOrigin.Circuit))
        {
            _notes.Add("New circuits share spaces as tandems. Arc-fault and dual-function breakers are rarely made as tandems: put plain circuits on those, and read the label for the spaces that take one.");
        }
    }

    private PanelSchedule ToSchedule(long bound)
    {
        var (a, b) = (Leg(PanelLeg.A), Leg(PanelLeg.B));
        return new PanelSchedule
        {
            PanelId = _panelId,
            Spaces = _grid.Spaces,
            Breakers = [.. _placed.OrderBy(p => p.Spaces[0])],
            Unplaced = [.. _unplaced],
            LegAVa = a,
            LegBVa = b,
            ImbalanceVa = _page.Compute(Operation.Apart, "leg-imbalance", "How far the legs are apart", Unit.VoltAmperes, a, b),
            LowerBoundVa = bound,
            Notes = [.. _notes],
        };
    }

    private Fact Leg(PanelLeg leg) => _page.Sum(
        "leg-load", leg is PanelLeg.A ? "Load on leg A" : "Load on leg B", Unit.VoltAmperes,
        [.. _placed.Where(p => p.Leg == leg || p.Leg is PanelLeg.Both).Select(p => p.Leg is PanelLeg.Both ? Half(p.Breaker.LoadVa) : p.Breaker.LoadVa)]);

    private Fact Half(Fact load) => _page.Compute(Operation.Quotient, "leg-load", "Half of a two-pole load", Unit.VoltAmperes, load, _page.Constant("Legs", 2));
}
