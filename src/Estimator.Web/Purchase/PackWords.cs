using Estimator.Engine.Purchase;
using Estimator.Web.Figures;

namespace Estimator.Web.Purchase;

/// <summary>A number of packs as a counter clerk reads it.</summary>
public static class PackWords
{
    /// <summary>What is taken from the shelf.</summary>
    public static string FromShelf(PurchaseLine line) => $"{American.Number(line.FromStock, 1)}{(line.Unit == "foot" ? " ft" : "")} from the shelf";

    /// <summary>Such as 2 × 250 ft, or 3 × pack of 10; single pieces by their number alone.</summary>
    public static string Of(PurchaseLine line, PackCount pack) => (line.Unit, pack.Offer.PackSize) switch
    {
        ("foot", 1) => $"{American.Number(pack.Count)} ft",
        ("foot", var feet) => $"{American.Number(pack.Count)} × {American.Number(feet)} ft",
        (_, 1) => American.Number(pack.Count),
        (_, var pieces) => $"{American.Number(pack.Count)} × pack of {American.Number(pieces)}",
    };
}
