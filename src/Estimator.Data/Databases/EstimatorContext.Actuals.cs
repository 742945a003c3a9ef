using Estimator.Data.Actuals;
using Estimator.Data.Companies;
using Estimator.Data.Jobs;
using Estimator.Data.Prices;
using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Databases;

internal abstract partial class EstimatorContext
{
    public DbSet<ActualHoursRow> ActualHours => Set<ActualHoursRow>();

    public DbSet<UsedMaterialRow> UsedMaterial => Set<UsedMaterialRow>();

    public DbSet<JobClosingRow> JobClosings => Set<JobClosingRow>();

    public DbSet<OwnUnitRow> OwnUnits => Set<OwnUnitRow>();

    private void ActualsTables(ModelBuilder model)
    {
        Table<ActualHoursRow>(model, "actual_hours", r => new { r.CompanyId, r.JobId, r.Id }).HasOne<JobRow>().WithMany().HasForeignKey(r => new { r.CompanyId, r.JobId });
        var used = Table<UsedMaterialRow>(model, "used_material", r => new { r.CompanyId, r.JobId, r.Item });
        used.Property(r => r.Item).HasMaxLength(PriceLimits.Name);
        used.HasOne<JobRow>().WithMany().HasForeignKey(r => new { r.CompanyId, r.JobId });
        var closings = Table<JobClosingRow>(model, "job_closings", r => new { r.CompanyId, r.JobId });
        closings.HasOne<JobRow>().WithMany().HasForeignKey(r => new { r.CompanyId, r.JobId });
        closings.HasMany(r => r.Outcomes).WithOne().HasForeignKey(r => new { r.CompanyId, r.JobId });
        var outcomes = Table<JobOutcomeRow>(model, "job_outcomes", r => new { r.CompanyId, r.JobId, r.Kind, r.Key });
        outcomes.Property(r => r.Key).HasMaxLength(ActualsLimits.Key);
        outcomes.Property(r => r.Kind).HasMaxLength(ActualsLimits.Key);
        outcomes.HasMany(r => r.Classes).WithOne().HasForeignKey(r => new { r.CompanyId, r.JobId, r.Kind, r.Key });
        var classes = Table<JobOutcomeClassRow>(model, "job_outcome_classes", r => new { r.CompanyId, r.JobId, r.Kind, r.Key, r.Class });
        classes.Property(r => r.Key).HasMaxLength(ActualsLimits.Key);
        classes.Property(r => r.Kind).HasMaxLength(ActualsLimits.Key);
        classes.Property(r => r.Class).HasMaxLength(ActualsLimits.Key);
        var units = Table<OwnUnitRow>(model, "own_units", r => new { r.CompanyId, r.Id });
        units.HasOne<CompanyRow>().WithMany().HasForeignKey(r => r.CompanyId).OnDelete(DeleteBehavior.Restrict);
        units.Property(r => r.Key).HasMaxLength(ActualsLimits.Key);
    }
}
