using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Databases;

/// <summary>The tables on a PostgreSQL server.</summary>
internal sealed class PostgresContext(DbContextOptions<PostgresContext> options) : EstimatorContext(options);
