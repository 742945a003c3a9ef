using System.Collections.Immutable;
using System.Globalization;
using Estimator.Engine.Catalogue;

namespace Estimator.Web.Orders;

/// <summary>What is to be bought together, and how. It stands in the address, so that page and documents say the same.</summary>
/// <param name="Jobs">Ids of the jobs.</param>
public sealed record OrderAsk(ImmutableArray<string> Jobs)
{
    /// <summary>The percentage to begin with: a few cents on a part are worth one trip less. Common practice, no source.</summary>
    public const int UsualPercent = 3;

    /// <summary>The phase that is bought for; null for all.</summary>
    public WorkPhase? Phase { get; init; }

    /// <summary>How it is divided among suppliers; null for the cheapest way.</summary>
    public SupplyWish? Wish { get; init; }

    /// <summary>The preferred supplier; empty for none.</summary>
    public string Preferred { get; init; } = "";

    /// <summary>How much more the preferred supplier may ask for an item, in hundredths.</summary>
    public int Within { get; init; } = UsualPercent;

    /// <summary>Whether what is on the shelf is used first.</summary>
    public bool Shelf { get; init; } = true;

    /// <summary>Address of a page or document of it.</summary>
    /// <param name="path">The page or document.</param>
    public string Address(string path)
    {
        var parts = Jobs.Select(j => ("job", j)).ToList();
        void Say(bool said, string name, string value)
        {
            if (said)
            {
                parts.Add((name, value));
            }
        }

        Say(Phase is not null, "phase", $"{Phase}");
        Say(Wish is not null, "way", $"{Wish}");
        Say(Preferred.Length > 0, "preferred", Preferred);
        Say(Within != UsualPercent, "within", Within.ToString(CultureInfo.InvariantCulture));
        Say(!Shelf, "shelf", "no");
        return $"{path}?{string.Join('&', parts.Select(p => $"{p.Item1}={Uri.EscapeDataString(p.Item2)}"))}".TrimEnd('?');
    }

    /// <summary>What an address asks for; what can't be read is taken as not asked.</summary>
    public static OrderAsk Of(string[]? jobs, string? phase, string? way, string? preferred, string? within, string? shelf) => new([.. jobs ?? []])
    {
        Phase = Enum.TryParse<WorkPhase>(phase, out var p) && Enum.IsDefined(p) ? p : null,
        Wish = Enum.TryParse<SupplyWish>(way, out var w) && Enum.IsDefined(w) ? w : null,
        Preferred = preferred ?? "",
        Within = int.TryParse(within, NumberStyles.None, CultureInfo.InvariantCulture, out var percent) && percent <= 100 ? percent : UsualPercent,
        Shelf = shelf != "no",
    };
}
