using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;

namespace Estimator.Engine.Wiring.Boxes;

/// <summary>Picks the smallest box of the catalogue that holds what is in it.</summary>
/// <remarks>Source: NEC 314.16, counted by the edition in force.</remarks>
internal sealed class BoxChoice(ImmutableArray<BoxItem> items, CodeEdition edition)
{
    /// <summary>The box, what its contents ask for, and whether they fit. Where nothing fits, the largest that could serve is named.</summary>
    internal (BoxItem? Item, Fact Required, bool Fits) For(BoxLoads loads, PageWriter page)
    {
        BoxItem? largest = null;
        foreach (var item in Candidates(loads.Draft))
        {
            largest = item;
            if (Ask(loads, item.InternalClamps, new PageWriter(page.Page)).Value <= item.Volume.ToCubicInches())
            {
                return (item, Ask(loads, item.InternalClamps, page), true);
            }
        }

        var required = Ask(loads, largest?.InternalClamps ?? false, page);
        return (largest, required, loads.Draft.Use is BoxUse.OwnHousing);
    }

    /// <summary>Whether any box of the catalogue would hold it.</summary>
    internal bool Fits(BoxLoads loads)
    {
        var page = new PageWriter(0);
        return loads.Draft.Use is BoxUse.OwnHousing
            || Candidates(loads.Draft).Any(i => Ask(loads, i.InternalClamps, page).Value <= i.Volume.ToCubicInches());
    }

    private IEnumerable<BoxItem> Candidates(DraftBox draft)
    {
        var sameUse = items.Where(i => i.Use == draft.Use && i.Gangs == draft.Gangs).ToList();
        var sameWork = sameUse.Where(i => i.OldWork == draft.OldWork).ToList();
        var known = sameWork.Count > 0 ? sameWork : sameUse;
        var made = known.Where(i => i.Material is BoxMaterial.Any || i.Material is BoxMaterial.Metal == draft.Metal).ToList();
        return (made.Count > 0 ? made : known).OrderBy(i => i.Volume).ThenBy(i => i.ItemId, StringComparer.Ordinal);
    }

    private Fact Ask(BoxLoads loads, bool clamps, PageWriter page) => BoxFill.Required(page, edition, new BoxContents
    {
        Conductors = [(loads.Size, loads.Insulated)],
        Grounds = [(loads.Size, loads.Grounds)],
        Yokes = [.. Enumerable.Repeat((loads.Size, 1), loads.Yokes)],
        InternalClamps = clamps,
    });
}
