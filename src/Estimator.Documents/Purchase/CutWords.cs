using System.Globalization;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase;

namespace Estimator.Documents.Purchase;

/// <summary>A cut plan in words.</summary>
public static class CutWords
{
    /// <summary>A coil: its length, and where it comes from where that is the shelf.</summary>
    public static string Coil(CutCoil coil) =>
        coil.Shelf is { } shelf ? $"{shelf.Length} from the shelf ({shelf.Label})" : string.Create(CultureInfo.InvariantCulture, $"{coil.Length.ToFeet():0.#} ft{(coil.IsByTheFoot ? " cut to length" : "")}");

    /// <summary>What is bought, cut, kept and wasted, and how sure it is that no plan costs less.</summary>
    public static string Of(CutPlan cut) => string.Create(
        CultureInfo.InvariantCulture,
        $"{cut.Cost}; {Feet(cut.Bought)} bought{(cut.FromShelf > Length.Zero ? $", {Feet(cut.FromShelf)} from the shelf" : "")}, {Feet(cut.InPieces)} in pieces, {Feet(cut.Kept)} in ends worth keeping, {Feet(cut.Wasted)} wasted; {Sureness(cut)}");

    /// <summary>Whether it is proven that no plan costs less, or what could be saved at most.</summary>
    public static string Sureness(CutPlan cut) => cut.Proven ? "proven cheapest" : $"no plan costs less than {cut.LowerBound}, so at most {cut.Gap} could be saved";

    private static string Feet(Length length) => string.Create(CultureInfo.InvariantCulture, $"{length.ToFeet():#,0.0} ft");
}
