using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Suppliers;

public sealed class SqliteSupplierPriceTests(SqliteDatabase database) : SupplierPriceTests(database), IClassFixture<SqliteDatabase>;
