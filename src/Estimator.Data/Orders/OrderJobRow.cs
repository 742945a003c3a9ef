using Estimator.Data.Databases;

namespace Estimator.Data.Orders;

/// <summary>A job that an order is for.</summary>
internal sealed class OrderJobRow : OwnedRow
{
    public int OrderId { get; set; }

    public required string JobId { get; set; }

    public required string Name { get; set; }

    /// <summary>Place among the jobs, from 1.</summary>
    public int Place { get; set; }
}
