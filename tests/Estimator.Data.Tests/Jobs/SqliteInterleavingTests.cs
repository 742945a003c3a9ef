using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Jobs;

public sealed class SqliteInterleavingTests(SqliteDatabase database) : InterleavingTests(database), IClassFixture<SqliteDatabase>;
