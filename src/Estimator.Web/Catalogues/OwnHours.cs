using Estimator.Engine.Learning;

namespace Estimator.Web.Catalogues;

/// <summary>Lays the factors that the company accepted over the hours of a catalogue.</summary>
public static class OwnHours
{
    /// <summary>The catalogue with own hours; its file of labor says the same, so that a saved revision can be worked out again.</summary>
    /// <param name="catalogue">The catalogue.</param>
    /// <param name="own">The factors in force.</param>
    public static PricedCatalogue Over(PricedCatalogue catalogue, IReadOnlyCollection<OwnUnit> own)
    {
        var parts = OwnUnits.Over(catalogue.Parts, own);
        return ReferenceEquals(parts, catalogue.Parts) ? catalogue : new PricedCatalogue(parts, catalogue.Files.SetItem("labor.csv", OwnUnits.LaborCsv(parts)));
    }
}
