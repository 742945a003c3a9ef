using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Estimator.Data.Databases;

/// <summary>Raises the version of each changed row, and lets no row of another company pass.</summary>
internal sealed class RowRules : SaveChangesInterceptor
{
    public override InterceptionResult<int> SavingChanges(DbContextEventData eventData, InterceptionResult<int> result)
    {
        Apply((EstimatorContext)eventData.Context!);
        return result;
    }

    public override ValueTask<InterceptionResult<int>> SavingChangesAsync(
        DbContextEventData eventData, InterceptionResult<int> result, CancellationToken cancellationToken = default) =>
        ValueTask.FromResult(SavingChanges(eventData, result));

    private static void Apply(EstimatorContext context)
    {
        foreach (var entry in context.ChangeTracker.Entries<OwnedRow>())
        {
            if (entry.Entity.CompanyId != context.CompanyId)
            {
                throw new InvalidOperationException($"A row of company {entry.Entity.CompanyId} was about to be written for company {context.CompanyId}.");
            }

            if (entry.State is EntityState.Modified && entry.Entity is VersionedRow row)
            {
                row.Version++;
            }
        }
    }
}
