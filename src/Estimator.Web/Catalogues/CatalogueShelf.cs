using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Web.Start;

namespace Estimator.Web.Catalogues;

/// <summary>The catalogue that jobs are priced with, ready to hand; one for the whole program.</summary>
public sealed class CatalogueShelf
{
    private PricedCatalogue _current = BuiltIn();

    /// <summary>The catalogue now.</summary>
    public PricedCatalogue Current => Volatile.Read(ref _current);

    /// <summary>Raised when another catalogue is in force: open jobs are priced again.</summary>
    public event Action? Changed;

    /// <summary>Puts another catalogue in force.</summary>
    public void Put(PricedCatalogue catalogue)
    {
        Volatile.Write(ref _current, catalogue);
        Changed?.Invoke();
    }

    /// <summary>The catalogue that the program carries with it; its prices are invented samples.</summary>
    /// <exception cref="InvalidDataException">The files of the program do not fit one another.</exception>
    public static PricedCatalogue BuiltIn()
    {
        var files = PartsCatalogue.FileNames.ToImmutableSortedDictionary(n => n, n => Resources.Read($"catalog/{n}"), StringComparer.Ordinal);
        var read = PartsCatalogue.Read(files);
        return read.Ok ? new PricedCatalogue(read.Value, files) : throw new InvalidDataException(read.Problem);
    }
}
