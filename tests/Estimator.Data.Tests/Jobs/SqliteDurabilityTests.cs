using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Jobs;

public sealed class SqliteDurabilityTests(SqliteDatabase database) : DurabilityTests(database), IClassFixture<SqliteDatabase>;
