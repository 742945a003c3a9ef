using Estimator.Data.Contracts;
using Estimator.Data.Jobs;
using Estimator.Data.Revisions;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Databases;

internal abstract partial class EstimatorContext
{
    public DbSet<BidEventRow> BidEvents => Set<BidEventRow>();

    public DbSet<SentBidRow> SentBids => Set<SentBidRow>();

    public DbSet<KeptDocumentRow> KeptDocuments => Set<KeptDocumentRow>();

    public DbSet<ChangeOrderRow> ChangeOrders => Set<ChangeOrderRow>();

    public DbSet<InvoiceRow> Invoices => Set<InvoiceRow>();

    private void ContractTables(ModelBuilder model)
    {
        Table<BidEventRow>(model, "bid_events", r => new { r.CompanyId, r.JobId, r.Revision, r.Sequence });
        model.Entity<RevisionRow>().HasMany(r => r.Events).WithOne().HasForeignKey(r => new { r.CompanyId, r.JobId, r.Revision });
        Table<SentBidRow>(model, "sent_bids", r => new { r.CompanyId, r.JobId, r.Revision });
        model.Entity<RevisionRow>().HasOne(r => r.Sent).WithOne().HasForeignKey<SentBidRow>(r => new { r.CompanyId, r.JobId, r.Revision });
        Table<SentBidLineRow>(model, "sent_bid_lines", r => new { r.CompanyId, r.JobId, r.Revision, r.Line });
        model.Entity<SentBidRow>().HasMany(r => r.Lines).WithOne().HasForeignKey(r => new { r.CompanyId, r.JobId, r.Revision });

        var documents = Table<KeptDocumentRow>(model, "kept_documents", r => new { r.CompanyId, r.JobId, r.Paper, r.Number, r.File });
        documents.HasOne<JobRow>().WithMany().HasForeignKey(r => new { r.CompanyId, r.JobId });

        var changes = Table<ChangeOrderRow>(model, "change_orders", r => new { r.CompanyId, r.JobId, r.Number });
        changes.HasOne<RevisionRow>().WithMany().HasForeignKey(r => new { r.CompanyId, r.JobId, r.FromRevision });
        changes.HasOne<RevisionRow>().WithMany().HasForeignKey(r => new { r.CompanyId, r.JobId, r.ToRevision });
        changes.HasMany(r => r.Lines).WithOne().HasForeignKey(r => new { r.CompanyId, r.JobId, r.Number });
        changes.HasMany(r => r.Events).WithOne().HasForeignKey(r => new { r.CompanyId, r.JobId, r.Number });
        Table<ChangeLineRow>(model, "change_order_lines", r => new { r.CompanyId, r.JobId, r.Number, r.Line });
        Table<ChangeEventRow>(model, "change_order_events", r => new { r.CompanyId, r.JobId, r.Number, r.Sequence });

        var invoices = Table<InvoiceRow>(model, "invoices", r => new { r.CompanyId, r.Number });
        invoices.HasOne<JobRow>().WithMany().HasForeignKey(r => new { r.CompanyId, r.JobId });
        invoices.HasIndex(r => new { r.CompanyId, r.JobId, r.Place }).IsUnique();
        invoices.HasMany(r => r.Lines).WithOne().HasForeignKey(r => new { r.CompanyId, r.Number });
        invoices.HasMany(r => r.Events).WithOne().HasForeignKey(r => new { r.CompanyId, r.Number });
        Table<InvoiceLineRow>(model, "invoice_lines", r => new { r.CompanyId, r.Number, r.Line });
        Table<InvoiceEventRow>(model, "invoice_events", r => new { r.CompanyId, r.Number, r.Sequence });
    }
}
