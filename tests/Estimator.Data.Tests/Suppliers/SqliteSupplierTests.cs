using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Suppliers;

public sealed class SqliteSupplierTests(SqliteDatabase database) : SupplierTests(database), IClassFixture<SqliteDatabase>;
