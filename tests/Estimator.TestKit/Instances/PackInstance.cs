using System.Globalization;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;

namespace Estimator.TestKit.Instances;

/// <summary>A number of pieces to buy in packs, and the least price.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Need">Pieces.</param>
/// <param name="Offers">The packs.</param>
/// <param name="LeastPrice">The least price.</param>
public sealed record PackInstance(string Name, int Need, Offer[] Offers, decimal LeastPrice)
{
    /// <summary>The rows of <c>packs.csv</c>.</summary>
    public static IEnumerable<PackInstance> In(string path) => ReferenceCsv.Read(path).Select(r => new PackInstance(
        r["name"], int.Parse(r["need"], CultureInfo.InvariantCulture),
        [.. r["packs_size_price"].Split(' ').Select(p => p.Split(':')).Select(p => new Offer("i", "s", int.Parse(p[0], CultureInfo.InvariantCulture), Money.FromDollars(decimal.Parse(p[1], CultureInfo.InvariantCulture)), ""))],
        decimal.Parse(r["optimum_price"], CultureInfo.InvariantCulture)));
}
