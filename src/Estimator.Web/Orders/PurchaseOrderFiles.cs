using Estimator.Data.Companies;
using Estimator.Data.Orders;
using Estimator.Data.Suppliers;
using Estimator.Documents.Labor;
using Estimator.Documents.Orders;
using Estimator.Web.Revisions;
using Estimator.Web.Suppliers;

namespace Estimator.Web.Orders;

/// <summary>Hands out a purchase order.</summary>
public static class PurchaseOrderFiles
{
    /// <summary>Maps the addresses.</summary>
    public static void MapPurchaseOrderFiles(this WebApplication app) => app.MapGet("/orders/{id:int}/{file}", HandOutAsync);

    internal static async Task<IResult> HandOutAsync(int id, string file, OrderStore orders, SupplierStore suppliers, CompanyStore companies, TimeProvider clock, CancellationToken token)
    {
        if (file is not ("order.xlsx" or "order.csv") || await orders.LoadAsync(id, token) is not { } stored)
        {
            return Results.NotFound();
        }

        var paper = Paper(stored, (await suppliers.ListAsync(token)).FirstOrDefault(s => s.Id == stored.SupplierId));
        var name = $"order-{string.Concat(stored.Number.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'))}{Path.GetExtension(file)}";
        var letterhead = OrderFiles.Head(await companies.LoadAsync(token), DateOnly.FromDateTime(clock.GetLocalNow().Date));
        return file == "order.csv"
            ? Results.File(RevisionFiles.TableBytes(PurchaseOrderTable.Write(paper)), RevisionFiles.Table, name)
            : Results.File(PurchaseOrderWorkbook.Write(paper, letterhead), RevisionFiles.Workbook, name);
    }

    private static OrderPaper Paper(StoredOrder stored, Supplier? supplier) => new(stored.Number, stored.Supplier, stored.Order)
    {
        Account = supplier?.Account ?? "",
        Contact = supplier?.Contact ?? "",
        Jobs = [.. stored.Jobs.Select(j => j.Name)],
        Phase = stored.Phase is { } phase ? PhaseWords.Of(phase) : "",
        NeedBy = stored.NeedBy,
        Way = SupplierWords.Of(stored.Way),
        Note = stored.Note,
    };
}
