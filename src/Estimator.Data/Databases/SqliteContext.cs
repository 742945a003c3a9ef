using Microsoft.EntityFrameworkCore;

namespace Estimator.Data.Databases;

/// <summary>The tables in a SQLite file.</summary>
internal sealed class SqliteContext(DbContextOptions<SqliteContext> options) : EstimatorContext(options);
