using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Jobs;

public sealed class SqliteListTests(SqliteDatabase database) : ListTests(database), IClassFixture<SqliteDatabase>;
