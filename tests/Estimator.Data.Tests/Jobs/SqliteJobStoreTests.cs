using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Jobs;

public sealed class SqliteJobStoreTests(SqliteDatabase database) : JobStoreTests(database), IClassFixture<SqliteDatabase>;
