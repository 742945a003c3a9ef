using Estimator.Data.Companies;
using Estimator.Data.Jobs;
using Estimator.Data.Orders;
using Estimator.Data.Prices;
using Estimator.Data.Stock;
using Estimator.Data.Suppliers;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Databases;

internal abstract partial class EstimatorContext
{
    public DbSet<SupplierRow> Suppliers => Set<SupplierRow>();

    public DbSet<PriceImportRow> PriceImports => Set<PriceImportRow>();

    public DbSet<SupplierPriceRow> SupplierPrices => Set<SupplierPriceRow>();

    public DbSet<SupplierNumberRow> SupplierNumbers => Set<SupplierNumberRow>();

    public DbSet<ItemGtinRow> ItemGtins => Set<ItemGtinRow>();

    public DbSet<StockCountRow> StockCounts => Set<StockCountRow>();

    public DbSet<StockPieceRow> StockPieces => Set<StockPieceRow>();

    public DbSet<OrderRow> Orders => Set<OrderRow>();

    private void SupplyTables(ModelBuilder model)
    {
        var suppliers = Table<SupplierRow>(model, "suppliers", r => new { r.CompanyId, r.Id });
        suppliers.HasOne<CompanyRow>().WithMany().HasForeignKey(r => r.CompanyId).OnDelete(DeleteBehavior.Restrict);
        suppliers.Property(r => r.Name).HasMaxLength(SupplierLimits.Name);
        suppliers.HasIndex(r => new { r.CompanyId, r.Name }).IsUnique();

        var imports = Table<PriceImportRow>(model, "price_imports", r => new { r.CompanyId, r.SupplierId, r.Number });
        imports.HasOne<SupplierRow>().WithMany().HasForeignKey(r => new { r.CompanyId, r.SupplierId });

        var prices = Table<SupplierPriceRow>(model, "supplier_prices", r => new { r.CompanyId, r.SupplierId, r.Item, r.PackSize, r.Import });
        prices.Property(r => r.Item).HasMaxLength(PriceLimits.Name);
        prices.HasOne<PriceImportRow>().WithMany().HasForeignKey(r => new { r.CompanyId, r.SupplierId, r.Import });
        prices.HasIndex(r => new { r.CompanyId, r.Item });

        var numbers = Table<SupplierNumberRow>(model, "supplier_numbers", r => new { r.CompanyId, r.SupplierId, r.Number });
        numbers.Property(r => r.Number).HasMaxLength(SupplierLimits.Name);
        numbers.HasOne<SupplierRow>().WithMany().HasForeignKey(r => new { r.CompanyId, r.SupplierId });
        Table<ItemGtinRow>(model, "item_gtins", r => new { r.CompanyId, r.Gtin }).HasOne<CompanyRow>().WithMany().HasForeignKey(r => r.CompanyId);

        var counts = Table<StockCountRow>(model, "stock_counts", r => new { r.CompanyId, r.Item });
        counts.Property(r => r.Item).HasMaxLength(PriceLimits.Name);
        counts.HasOne<CompanyRow>().WithMany().HasForeignKey(r => r.CompanyId);
        var pieces = Table<StockPieceRow>(model, "stock_pieces", r => new { r.CompanyId, r.Id });
        pieces.Property(r => r.Item).HasMaxLength(PriceLimits.Name);
        pieces.HasOne<CompanyRow>().WithMany().HasForeignKey(r => r.CompanyId);
        OrderTables(model);
    }

    private void OrderTables(ModelBuilder model)
    {
        var orders = Table<OrderRow>(model, "purchase_orders", r => new { r.CompanyId, r.Id });
        orders.Property(r => r.Number).HasMaxLength(OrderLimits.Number);
        orders.HasIndex(r => new { r.CompanyId, r.Number }).IsUnique();
        orders.HasOne<SupplierRow>().WithMany().HasForeignKey(r => new { r.CompanyId, r.SupplierId }).OnDelete(DeleteBehavior.Restrict);
        orders.HasMany(r => r.Jobs).WithOne().HasForeignKey(r => new { r.CompanyId, r.OrderId });
        orders.HasMany(r => r.Lines).WithOne().HasForeignKey(r => new { r.CompanyId, r.OrderId });
        orders.HasMany(r => r.Events).WithOne().HasForeignKey(r => new { r.CompanyId, r.OrderId });

        var jobs = Table<OrderJobRow>(model, "purchase_order_jobs", r => new { r.CompanyId, r.OrderId, r.JobId });

        // An order outlives a job that is deleted; it is then for the others, and no later job of the same id takes its place.
        jobs.HasOne<JobRow>().WithMany().HasForeignKey(r => new { r.CompanyId, r.JobId }).OnDelete(DeleteBehavior.Cascade);
        Table<OrderLineRow>(model, "purchase_order_lines", r => new { r.CompanyId, r.OrderId, r.Line });
        Table<OrderEventRow>(model, "purchase_order_events", r => new { r.CompanyId, r.OrderId, r.Sequence });
    }
}
