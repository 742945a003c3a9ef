using System.Collections.Immutable;
using System.Globalization;
using Estimator.Data.Companies;
using Estimator.Data.Databases;
using Estimator.Engine.Purchase.Orders;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Orders;

/// <summary>Keeps purchase orders: lines as they were ordered, and a log of all that happened to them.</summary>
public sealed class OrderStore
{
    private const int Tries = 20;

    private readonly IDbContextFactory<EstimatorContext> _contexts;
    private readonly CurrentCompany _company;
    private readonly TimeProvider _clock;

    internal OrderStore(IDbContextFactory<EstimatorContext> contexts, CurrentCompany company, TimeProvider clock) => (_contexts, _company, _clock) = (contexts, company, clock);

    /// <summary>All orders, newest first.</summary>
    /// <param name="token">Ends the wait.</param>
    public Task<ImmutableArray<StoredOrder>> ListAsync(CancellationToken token = default) => ReadAsync(rows => rows, token);

    /// <summary>The orders for any of some jobs, newest first.</summary>
    /// <param name="jobs">Ids of the jobs.</param>
    /// <param name="token">Ends the wait.</param>
    public Task<ImmutableArray<StoredOrder>> ForJobsAsync(IReadOnlyCollection<string> jobs, CancellationToken token = default) =>
        ReadAsync(rows => rows.Where(r => r.Jobs!.Any(j => jobs.Contains(j.JobId))), token);

    /// <summary>An order; null where there is none of that number.</summary>
    /// <param name="id">Its number in the company.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task<StoredOrder?> LoadAsync(int id, CancellationToken token = default) => (await ReadAsync(rows => rows.Where(r => r.Id == id), token)).SingleOrDefault();

    /// <summary>Stores new orders, all or none. Each gets the company's next number.</summary>
    /// <param name="orders">The orders; what happened to them is not taken over.</param>
    /// <param name="token">Ends the wait.</param>
    /// <exception cref="ArgumentException">An order has no line, or its note is beyond <see cref="OrderLimits"/>.</exception>
    public async Task<ImmutableArray<StoredOrder>> CreateAsync(IReadOnlyList<StoredOrder> orders, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(orders);
        if (orders.FirstOrDefault(o => o.Order.Lines.IsEmpty || o.Jobs.IsEmpty || o.Note.Length > OrderLimits.Note) is { } wrong)
        {
            throw new ArgumentException($"The order for {wrong.Supplier} has {wrong.Order.Lines.Length} lines, {wrong.Jobs.Length} jobs and a note of {wrong.Note.Length} characters; lines, jobs and up to {OrderLimits.Note} characters are accepted.", nameof(orders));
        }

        for (var attempt = 1; ; attempt++)
        {
            await using var db = await _contexts.CreateDbContextAsync(token);
            var id = await db.Orders.MaxAsync(r => (int?)r.Id, token) ?? 0;
            var taken = (await db.Orders.Select(r => r.Number).ToListAsync(token)).ToHashSet(StringComparer.Ordinal);
            var number = taken.Select(n => int.TryParse(n, NumberStyles.None, CultureInfo.InvariantCulture, out var whole) && whole < int.MaxValue - orders.Count ? whole : 0).Append(OrderLimits.FirstNumber - 1).Max();
            List<OrderRow> rows = [.. orders.Select(o => OrderRows.New(o, ++id, (++number).ToString(CultureInfo.InvariantCulture), _company.Id, _clock.GetUtcNow()))];
            db.Orders.AddRange(rows);
            try
            {
                await db.SaveChangesAsync(token);
                rows.ForEach(r => r.Events = []);
                return [.. rows.Select(OrderRows.Order)];
            }
            catch (DbUpdateException e) when (LostRace.Is(e) && attempt < Tries)
            {
                // Somebody else took the numbers: the next ones are tried.
            }
        }
    }

    /// <summary>Changes number, day, way and note of a draft, unless somebody else changed it since it was read.</summary>
    /// <param name="order">The order, with the version that it was read at.</param>
    /// <param name="token">Ends the wait.</param>
    /// <exception cref="ArgumentException">A field is beyond <see cref="OrderLimits"/>, another order has the number, or the order is no draft.</exception>
    public async Task<Saving<StoredOrder>> ChangeAsync(StoredOrder order, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(order);
        var number = StorableText.Of(order.Number.Trim());
        if (number.Length is 0 or > OrderLimits.Number || order.Note.Length > OrderLimits.Note)
        {
            throw new ArgumentException($"Number has {number.Length} characters and note {order.Note.Length}; 1 to {OrderLimits.Number} and up to {OrderLimits.Note} are accepted.", nameof(order));
        }

        return await SaveAsync(order.Id, order.Version, async (db, row) =>
        {
            if (row.Events!.Count > 0)
            {
                throw new ArgumentException("The order is no draft any more: note what happened instead.", nameof(order));
            }

            if (await db.Orders.AnyAsync(r => r.Number == number && r.Id != order.Id, token))
            {
                throw new ArgumentException($"Another order has the number {number}; a number that no other has is accepted.", nameof(order));
            }

            (row.Number, row.NeedBy, row.Way, row.Note, row.DeliveryE4) = (number, order.NeedBy, Word.Of(order.Way), StorableText.Of(order.Note), Scaled.ToE4(order.Order.Delivery));
        }, token);
    }

    /// <summary>Notes what happened to an order, all of it or nothing, unless somebody else noted something since it was read.</summary>
    /// <param name="id">The order.</param>
    /// <param name="version">Version that it was read at.</param>
    /// <param name="happened">What happened, in order.</param>
    /// <param name="who">Who notes it.</param>
    /// <param name="token">Ends the wait.</param>
    /// <exception cref="ArgumentException">Something can't have happened; the message says why.</exception>
    public Task<Saving<StoredOrder>> NoteAsync(int id, int version, IReadOnlyList<OrderEvent> happened, string who, CancellationToken token = default) => SaveAsync(id, version, (_, row) =>
    {
        var order = OrderRows.Order(row).Order;
        foreach (var e in happened)
        {
            if ((e.Text.Length > OrderLimits.Note ? $"Text has {e.Text.Length} characters; up to {OrderLimits.Note} are accepted." : order.Refusal(e)) is { } refusal)
            {
                throw new ArgumentException(refusal, nameof(happened));
            }

            order = order with { Events = order.Events.Add(e) };
            row.Events!.Add(OrderRows.Row(e, id, ++row.EventCount, who, _company.Id, _clock.GetUtcNow()));
        }

        return Task.CompletedTask;
    }, token);

    private async Task<Saving<StoredOrder>> SaveAsync(int id, int version, Func<EstimatorContext, OrderRow, Task> change, CancellationToken token)
    {
        await using (var db = await _contexts.CreateDbContextAsync(token))
        {
            // In one query, so that version and events are of one moment.
            var row = await Whole(db.Orders).AsSingleQuery().SingleOrDefaultAsync(r => r.Id == id, token) ?? throw new ArgumentException($"There is no order {id}.", nameof(id));
            if (row.Version != version)
            {
                return new Saving<StoredOrder>(false, OrderRows.Order(row));
            }

            await change(db, row);
            try
            {
                await db.SaveChangesAsync(token);
                return new Saving<StoredOrder>(true, OrderRows.Order(row));
            }
            catch (DbUpdateException e) when (LostRace.Is(e))
            {
                // What the other one noted is read below, in a context of its own.
            }
        }

        return new Saving<StoredOrder>(false, (await LoadAsync(id, token))!);
    }

    private async Task<ImmutableArray<StoredOrder>> ReadAsync(Func<IQueryable<OrderRow>, IQueryable<OrderRow>> which, CancellationToken token)
    {
        await using var db = await _contexts.CreateDbContextAsync(token);
        return [.. (await which(Whole(db.Orders.AsNoTracking()).AsSplitQuery()).OrderByDescending(r => r.Id).ToListAsync(token)).Select(OrderRows.Order)];
    }

    private static IQueryable<OrderRow> Whole(IQueryable<OrderRow> rows) => rows.Include(r => r.Jobs).Include(r => r.Lines).Include(r => r.Events);
}
