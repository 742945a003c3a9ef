using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Layout;

/// <summary>How many receptacles a wall space, counter, island, hallway or foyer needs.</summary>
/// <remarks>Source: NEC 210.52(A), (C), (H), (I); the counts follow from the distances by arithmetic.</remarks>
public static class ReceptacleCounts
{
    /// <summary>For an unbroken wall space.</summary>
    /// <param name="length">The space.</param>
    /// <param name="wanted">Distance between receptacles that the firm wants; it counts where it is tighter than the code's.</param>
    public static int WallSpace(Length length, Length? wanted = null)
    {
        var between = ReceptacleRules.WallBetween.Inches();
        return length < ReceptacleRules.WallSpaceLeast.Inches() ? 0 : Pieces(length, Length.Min(between, wanted ?? between));
    }

    /// <summary>For a straight piece of wall counter.</summary>
    public static int Counter(Length length) => length < ReceptacleRules.CounterLeast.Inches() ? 0 : Pieces(length, ReceptacleRules.CounterBetween.Inches());

    /// <summary>For an island or peninsula by its sides: 2017 by size, 2020 by area, later none.</summary>
    public static int Island(CodeEdition edition, Length length, Length depth) => edition switch
    {
        CodeEdition.Nec2017 => Length.Max(length, depth) >= ReceptacleRules.IslandLong2017.Inches() && Length.Min(length, depth) >= ReceptacleRules.IslandWide2017.Inches() ? 1 : 0,
        CodeEdition.Nec2020 => IslandByArea(length.ToFeet() * depth.ToFeet()),
        _ => 0,
    };

    /// <summary>For an island or peninsula by its area, 2020.</summary>
    public static int IslandByArea(decimal squareFeet)
    {
        var first = ReceptacleRules.IslandFirst2020.Number();
        return squareFeet <= 0 ? 0 : squareFeet <= first ? 1 : 1 + (int)decimal.Ceiling((squareFeet - first) / ReceptacleRules.IslandMore2020.Number());
    }

    /// <summary>For a hallway by its length on the centre line.</summary>
    public static int Hallway(Length length) => length >= ReceptacleRules.HallwayLeast.Inches() ? 1 : 0;

    private static int Pieces(Length length, Length most) => (int)((length.ToNanometres() + most.ToNanometres() - 1) / most.ToNanometres());

    /// <summary>Receptacles of a foyer: one for each wall space that is long enough, where the foyer is large enough.</summary>
    /// <remarks>Source: NEC 210.52(I).</remarks>
    internal static int Foyer(FramedHouse house, FramedRoom foyer) => foyer.AreaSquareFeet.Value <= ReceptacleRules.FoyerArea.Number()
        ? 0
        : WallSpaces.Of(house, foyer.Index).Count(s => Length.FromSixteenths(s.Length) >= ReceptacleRules.FoyerWall.Inches());
}
