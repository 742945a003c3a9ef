using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Prices;

public sealed class SqliteLocalPriceTests(SqliteDatabase database) : LocalPriceTests(database), IClassFixture<SqliteDatabase>;
