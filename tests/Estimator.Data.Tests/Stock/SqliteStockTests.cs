using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Stock;

public sealed class SqliteStockTests(SqliteDatabase database) : StockTests(database), IClassFixture<SqliteDatabase>;
