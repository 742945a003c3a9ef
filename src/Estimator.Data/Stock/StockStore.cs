using Estimator.Data.Companies;
using Estimator.Data.Databases;
using Estimator.Data.Prices;
using Estimator.Engine.Measures;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Stock;

/// <summary>Keeps what the company has on its shelf.</summary>
public sealed class StockStore
{
    private readonly IDbContextFactory<EstimatorContext> _contexts;
    private readonly CurrentCompany _company;

    internal StockStore(IDbContextFactory<EstimatorContext> contexts, CurrentCompany company) => (_contexts, _company) = (contexts, company);

    /// <summary>All that is on the shelf.</summary>
    /// <param name="token">Ends the wait.</param>
    public async Task<Shelf> LoadAsync(CancellationToken token = default)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        var counts = await db.StockCounts.AsNoTracking().ToListAsync(token);
        var pieces = await db.StockPieces.AsNoTracking().ToListAsync(token);
        return new Shelf([.. counts.Select(Count).OrderBy(c => c.Item, StringComparer.Ordinal)], [.. pieces.Select(Piece).OrderBy(p => p.Item, StringComparer.Ordinal).ThenBy(p => p.Id)]);
    }

    /// <summary>Saves how many units of an item there are, unless somebody else counted since it was read; zero takes it off the shelf.</summary>
    /// <param name="count">The count.</param>
    /// <param name="token">Ends the wait.</param>
    /// <exception cref="ArgumentException">A field is beyond <see cref="StockLimits"/>.</exception>
    public async Task<Saving<ShelfCount>> SaveAsync(ShelfCount count, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(count);
        FieldLimits.Text(count.Item, 1, PriceLimits.Name, nameof(count.Item));
        if (count.Count is < 0 or > StockLimits.Count)
        {
            throw new ArgumentException($"Count is {count.Count}; 0 to {StockLimits.Count} is accepted.", nameof(count));
        }

        await using (var db = await _contexts.CreateDbContextAsync(token))
        {
            var row = await db.StockCounts.SingleOrDefaultAsync(r => r.Item == count.Item, token);
            if (row is not null && row.Version != count.Version)
            {
                return new Saving<ShelfCount>(false, Count(row));
            }

            if (row is null)
            {
                row = new StockCountRow { CompanyId = _company.Id, Item = StorableText.Of(count.Item), Version = 1 };
                db.StockCounts.Add(row);
            }

            row.CountE4 = Scaled.ToE4(count.Count);
            if (count.Count == 0)
            {
                db.StockCounts.Remove(row);
            }

            if (await TryAsync(db, token))
            {
                return new Saving<ShelfCount>(true, Count(row));
            }
        }

        return new Saving<ShelfCount>(false, (await LoadAsync(token)).Counts.SingleOrDefault(c => c.Item == count.Item) ?? new ShelfCount(count.Item, 0, 0));
    }

    /// <summary>Saves a partial coil, unless somebody else changed it since it was read; a length of zero takes it off the shelf.</summary>
    /// <param name="piece">The coil.</param>
    /// <param name="token">Ends the wait.</param>
    /// <exception cref="ArgumentException">A field is beyond <see cref="StockLimits"/>.</exception>
    public async Task<Saving<ShelfPiece>> SaveAsync(ShelfPiece piece, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(piece);
        FieldLimits.Text(piece.Item, 1, PriceLimits.Name, nameof(piece.Item));
        FieldLimits.Text(piece.Label, 1, StockLimits.Label, nameof(piece.Label));
        if (piece.Length < Length.Zero || piece.Length > StockLimits.Piece)
        {
            throw new ArgumentException($"Length is {piece.Length}; up to {StockLimits.Piece} is accepted.", nameof(piece));
        }

        await using (var db = await _contexts.CreateDbContextAsync(token))
        {
            var row = await db.StockPieces.SingleOrDefaultAsync(r => r.Id == piece.Id, token);
            if (piece.Id != 0 && row?.Version != piece.Version)
            {
                return new Saving<ShelfPiece>(false, row is null ? piece with { Length = Length.Zero, Version = 0 } : Piece(row));
            }

            if (row is null)
            {
                row = new StockPieceRow { CompanyId = _company.Id, Id = 1 + (await db.StockPieces.MaxAsync(r => (int?)r.Id, token) ?? 0), Item = "", Label = "", Version = 1 };
                db.StockPieces.Add(row);
            }

            (row.Item, row.Label, row.LengthNm) = (StorableText.Of(piece.Item), StorableText.Of(piece.Label.Trim()), piece.Length.ToNanometres());
            if (piece.Length == Length.Zero)
            {
                db.StockPieces.Remove(row);
            }

            if (await TryAsync(db, token))
            {
                return new Saving<ShelfPiece>(true, Piece(row));
            }
        }

        // A new one that lost the race for its number takes the next.
        return piece.Id == 0
            ? await SaveAsync(piece, token)
            : new Saving<ShelfPiece>(false, (await LoadAsync(token)).Pieces.SingleOrDefault(p => p.Id == piece.Id) ?? piece with { Length = Length.Zero, Version = 0 });
    }

    private static async Task<bool> TryAsync(EstimatorContext db, CancellationToken token)
    {
        try
        {
            await db.SaveChangesAsync(token);
            return true;
        }
        catch (DbUpdateException e) when (LostRace.Is(e))
        {
            return false;
        }
    }

    private static ShelfCount Count(StockCountRow row) => new(row.Item, Scaled.FromE4(row.CountE4), row.Version);

    private static ShelfPiece Piece(StockPieceRow row) => new(row.Id, row.Item, row.Label, Length.FromNanometres(row.LengthNm), row.Version);
}
