using Estimator.Data.Databases;
using Estimator.Data.Jobs;
using Estimator.Data.Suppliers;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Purchase.Orders;

namespace Estimator.Data.Orders;

/// <summary>Between orders and their rows.</summary>
internal static class OrderRows
{
    internal static StoredOrder Order(OrderRow r)
    {
        var events = r.Events!.OrderBy(e => e.Sequence).ToList();
        return new StoredOrder
        {
            Id = r.Id,
            Number = r.Number,
            SupplierId = r.SupplierId,
            Supplier = r.Supplier,
            Jobs = [.. r.Jobs!.OrderBy(j => j.Place).Select(j => (j.JobId, j.Name))],
            Phase = r.Phase is { } phase ? Word.Read<WorkPhase>(phase) : null,
            NeedBy = r.NeedBy,
            Way = Word.Read<SupplyWay>(r.Way),
            Note = r.Note,
            Order = new PurchaseOrder([.. r.Lines!.OrderBy(l => l.Line).Select(Line)], [.. events.Select(Event)], Scaled.MoneyFromE4(r.DeliveryE4)),
            Noted = [.. events.Select(e => (e.Who, JobRows.Utc(e.AtUtcTicks)))],
            Who = r.Who,
            At = JobRows.Utc(r.AtUtcTicks),
            Version = r.Version,
        };
    }

    internal static OrderRow New(StoredOrder order, int id, string number, long company, DateTimeOffset now) => new()
    {
        CompanyId = company,
        Id = id,
        Number = number,
        SupplierId = order.SupplierId,
        Supplier = StorableText.Of(order.Supplier),
        Phase = order.Phase is { } phase ? Word.Of(phase) : null,
        NeedBy = order.NeedBy,
        Way = Word.Of(order.Way),
        Note = StorableText.Of(order.Note),
        DeliveryE4 = Scaled.ToE4(order.Order.Delivery),
        Who = StorableText.Of(order.Who),
        AtUtcTicks = now.UtcTicks,
        Version = 1,
        Jobs = [.. order.Jobs.Select((j, i) => new OrderJobRow { CompanyId = company, JobId = j.Id, Name = StorableText.Of(j.Name), Place = i + 1 })],
        Lines = [.. order.Order.Lines.Select((l, i) => Row(l, i + 1, company))],
    };

    internal static OrderEventRow Row(OrderEvent e, int order, int sequence, string who, long company, DateTimeOffset now) => new()
    {
        CompanyId = company,
        OrderId = order,
        Sequence = sequence,
        Kind = Word.Of(e.Kind),
        On = e.On,
        Line = e.Line,
        Packs = e.Packs,
        AmountE4 = Scaled.ToE4(e.Amount),
        Until = e.Until,
        Text = StorableText.Of(e.Text.Trim()),
        Who = StorableText.Of(who),
        AtUtcTicks = now.UtcTicks,
    };

    private static OrderLineRow Row(OrderLine l, int line, long company) => new()
    {
        CompanyId = company,
        Line = line,
        Item = l.Item,
        Description = StorableText.Of(l.Description),
        Unit = l.Unit,
        PackSize = l.PackSize,
        Packs = l.Packs,
        PackPriceE4 = Scaled.ToE4(l.PackPrice),
        Number = StorableText.Of(l.Number),
    };

    private static OrderLine Line(OrderLineRow r) => new(r.Line, r.Item, r.Description, r.Unit, r.PackSize, r.Packs, Scaled.MoneyFromE4(r.PackPriceE4), r.Number);

    private static OrderEvent Event(OrderEventRow r) => new(Word.Read<OrderEventKind>(r.Kind), r.On)
    {
        Line = r.Line,
        Packs = r.Packs,
        Amount = Scaled.MoneyFromE4(r.AmountE4),
        Until = r.Until,
        Text = r.Text,
    };
}
