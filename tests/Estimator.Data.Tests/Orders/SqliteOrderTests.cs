using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Orders;

public sealed class SqliteOrderTests(SqliteDatabase database) : OrderTests(database), IClassFixture<SqliteDatabase>;
