using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Jobs;

public sealed class SqliteLogTests(SqliteDatabase database) : LogTests(database), IClassFixture<SqliteDatabase>;
