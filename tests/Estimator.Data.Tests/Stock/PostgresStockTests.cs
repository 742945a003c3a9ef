using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Stock;

public sealed class PostgresStockTests(PostgresDatabase database) : StockTests(database), IClassFixture<PostgresDatabase>;
