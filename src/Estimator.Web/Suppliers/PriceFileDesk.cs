using System.Collections.Immutable;
using System.Security.Cryptography;
using Estimator.Data.Suppliers;
using Estimator.Documents.Prices;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Purchase.PriceFiles;

namespace Estimator.Web.Suppliers;

/// <summary>A price file in hand: its columns are matched, then it is looked through, and nothing is written before that.</summary>
public sealed class PriceFileDesk : IDisposable
{
    private readonly string _path;
    private PriceFileRows? _rows;
    private ItemLinks _links;

    private PriceFileDesk(string path, string name, string hash, PriceFileHead head, Supplier supplier, ItemLinks links, ImmutableArray<KnownPrice> before, int after)
    {
        (_path, Name, Hash, Head, Supplier, _links, Before, After) = (path, name, hash, head, supplier, links, before, after);
        Matching = head.Start(supplier.Matching);
        Remembered = Matching == supplier.Matching;
    }

    /// <summary>Name of the file.</summary>
    public string Name { get; }

    /// <summary>SHA-256 of the file.</summary>
    public string Hash { get; }

    /// <summary>Its beginning.</summary>
    public PriceFileHead Head { get; }

    /// <summary>Whose file it is.</summary>
    public Supplier Supplier { get; }

    /// <summary>The supplier's prices until now.</summary>
    public ImmutableArray<KnownPrice> Before { get; }

    /// <summary>Number of the supplier's last file.</summary>
    public int After { get; }

    /// <summary>Which heading says what.</summary>
    public ColumnMatching Matching { get; private set; }

    /// <summary>Whether the matching began as the one that was used before.</summary>
    public bool Remembered { get; }

    /// <summary>What the file would do; null until it was looked through.</summary>
    public PricePreview? Preview { get; private set; }

    /// <summary>What is wrong, in rows that can't be read and in rows that contradict, in file order.</summary>
    public ImmutableArray<RowProblem> Problems { get; private set; } = [];

    /// <summary>How many rows are wrong.</summary>
    public int WrongRows { get; private set; }

    /// <summary>Takes a file in hand that lies at a path of this program's own, and is deleted with it.</summary>
    /// <exception cref="InvalidDataException">The file can't be read.</exception>
    public static async Task<PriceFileDesk> OpenAsync(string path, string name, Supplier supplier, SupplierPriceStore store, CancellationToken token)
    {
        var head = await Task.Run(() => PriceFileHead.Read(path), token);
        await using var stream = File.OpenRead(path);
        var hash = Convert.ToHexStringLower(await SHA256.HashDataAsync(stream, token));
        var imports = await store.ImportsAsync(supplier.Id, token);
        return new PriceFileDesk(path, name, hash, head, supplier, await store.LinksAsync(supplier.Id, token), await store.KnownAsync(supplier.Id, token), imports.Select(i => i.Number).FirstOrDefault());
    }

    /// <summary>Puts a column under another heading; what was looked through counts no more.</summary>
    public void Match(PriceColumn column, string? heading)
    {
        Matching = Matching.With(column, heading);
        (_rows, Preview) = (null, null);
    }

    /// <summary>Looks the whole file through.</summary>
    /// <exception cref="InvalidDataException">The file can't be read.</exception>
    public async Task LookAsync(PartsCatalogue catalogue, CancellationToken token)
    {
        _rows = await Task.Run(() => PriceFileRows.Read(_path, Head, Matching, token), token);
        Compare(catalogue);
    }

    /// <summary>Says by hand which item a row is; it will be remembered.</summary>
    public void Take(PriceRow row, string item, PartsCatalogue catalogue)
    {
        _links = _links.With(row, item);
        Compare(catalogue);
    }

    /// <summary>What is to be written.</summary>
    /// <param name="withdraw">Whether packs that the file does not name are offered no more.</param>
    /// <param name="who">Who writes it.</param>
    /// <param name="today">The day today.</param>
    public NewPrices ToWrite(bool withdraw, string who, DateOnly today) =>
        new(Supplier.Id, After, Name, Hash, who, today, Matching, [.. Preview!.Changes.Where(c => withdraw || c.Kind is not PackChangeKind.Gone)]);

    /// <inheritdoc/>
    public void Dispose() => File.Delete(_path);

    private void Compare(PartsCatalogue catalogue)
    {
        Preview = PricePreview.Of(_rows!.Rows, _links, Before, catalogue);
        Problems = [.. _rows.Problems.Concat(Preview.Problems).OrderBy(p => p.Row).Take(PriceFileRows.MostProblems)];
        WrongRows = _rows.WrongRows + Preview.Problems.Select(p => p.Row).Distinct().Count();
    }
}
