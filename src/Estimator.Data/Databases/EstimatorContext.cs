using System.Linq.Expressions;
using System.Text.Json;
using Estimator.Data.Companies;
using Estimator.Data.Jobs;
using Estimator.Data.Prices;
using Estimator.Data.Revisions;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Estimator.Data.Databases;

/// <summary>The tables. One context an operation; it sees the rows of one company.</summary>
internal abstract partial class EstimatorContext(DbContextOptions options) : DbContext(options)
{
    /// <summary>The company whose rows every query is held to.</summary>
    public long CompanyId { get; init; } = CurrentCompany.OwnId;

    public DbSet<CompanyRow> Companies => Set<CompanyRow>();

    public DbSet<JobRow> Jobs => Set<JobRow>();

    public DbSet<JobEditRow> JobEdits => Set<JobEditRow>();

    public DbSet<JobSnapshotRow> JobSnapshots => Set<JobSnapshotRow>();

    public DbSet<CatalogueRow> Catalogues => Set<CatalogueRow>();

    public DbSet<RevisionRow> Revisions => Set<RevisionRow>();

    public DbSet<LocalPriceRow> LocalPrices => Set<LocalPriceRow>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        Table<CompanyRow>(modelBuilder, "companies", r => r.CompanyId).Property(r => r.CompanyId).ValueGeneratedNever();
        JobTables(modelBuilder);
        RevisionTables(modelBuilder);
        var prices = Table<LocalPriceRow>(modelBuilder, "local_prices", r => new { r.CompanyId, r.Item, r.Supplier, r.PackSize });
        prices.HasOne<CompanyRow>().WithMany().HasForeignKey(r => r.CompanyId).OnDelete(DeleteBehavior.Restrict);
        prices.Property(r => r.Item).HasMaxLength(PriceLimits.Name);
        prices.Property(r => r.Supplier).HasMaxLength(PriceLimits.Name);
        SupplyTables(modelBuilder);
        ContractTables(modelBuilder);
        ActualsTables(modelBuilder);
        foreach (var property in modelBuilder.Model.GetEntityTypes().SelectMany(e => e.GetProperties()))
        {
            property.SetColumnName(JsonNamingPolicy.SnakeCaseLower.ConvertName(property.Name));
            property.IsConcurrencyToken |= property.Name == nameof(VersionedRow.Version) && property.DeclaringType.ClrType.IsAssignableTo(typeof(VersionedRow));
        }
    }

    private void JobTables(ModelBuilder model)
    {
        var jobs = Table<JobRow>(model, "jobs", r => new { r.CompanyId, r.Id });
        jobs.Property(r => r.Id).HasMaxLength(JobIds.Longest);
        jobs.HasOne<CompanyRow>().WithMany().HasForeignKey(r => r.CompanyId).OnDelete(DeleteBehavior.Restrict);
        jobs.HasIndex(r => new { r.CompanyId, r.Archived, r.ChangedUtcTicks });

        var edits = Table<JobEditRow>(model, "job_edits", r => new { r.CompanyId, r.JobId, r.Sequence });
        edits.Property(r => r.EditId).HasMaxLength(JobIds.Longest);
        edits.HasIndex(r => new { r.CompanyId, r.JobId, r.EditId }).IsUnique();
        edits.HasOne<JobRow>().WithMany().HasForeignKey(r => new { r.CompanyId, r.JobId });

        var snapshots = Table<JobSnapshotRow>(model, "job_snapshots", r => new { r.CompanyId, r.JobId, r.Version });
        snapshots.HasOne<JobRow>().WithMany().HasForeignKey(r => new { r.CompanyId, r.JobId });
    }

    private void RevisionTables(ModelBuilder model)
    {
        Table<CatalogueRow>(model, "catalogues", r => new { r.CompanyId, r.Hash });
        var revisions = Table<RevisionRow>(model, "revisions", r => new { r.CompanyId, r.JobId, r.Number });
        revisions.HasOne<JobRow>().WithMany().HasForeignKey(r => new { r.CompanyId, r.JobId });
        revisions.HasOne<CatalogueRow>().WithMany().HasForeignKey(r => new { r.CompanyId, r.CatalogueHash }).OnDelete(DeleteBehavior.Restrict);
        Lines(model, "revision_takeoff_lines", r => r.TakeoffLines);
        Lines(model, "revision_cables", r => r.Cables);
        Lines(model, "revision_boxes", r => r.Boxes);
        Lines(model, "revision_breakers", r => r.Breakers);
        Lines(model, "revision_connectors", r => r.Connectors);
        Lines(model, "revision_labor", r => r.Labor);
    }

    private void Lines<TRow>(ModelBuilder model, string name, Expression<Func<RevisionRow, IEnumerable<TRow>?>> of)
        where TRow : RevisionLineRow
    {
        Table<TRow>(model, name, r => new { r.CompanyId, r.JobId, r.Revision, r.Line });
        model.Entity<RevisionRow>().HasMany(of).WithOne().HasForeignKey(r => new { r.CompanyId, r.JobId, r.Revision });
    }

    private EntityTypeBuilder<TRow> Table<TRow>(ModelBuilder model, string name, Expression<Func<TRow, object?>> key)
        where TRow : OwnedRow
    {
        var table = model.Entity<TRow>().ToTable(name);
        table.HasKey(key);
        table.HasQueryFilter(r => r.CompanyId == CompanyId);
        return table;
    }
}
