namespace Estimator.Data.Tests.Databases;

public sealed class SqliteStartTests(SqliteDatabase database) : StartTests(database), IClassFixture<SqliteDatabase>;
