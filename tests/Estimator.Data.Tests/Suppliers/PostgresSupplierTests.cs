using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Suppliers;

public sealed class PostgresSupplierTests(PostgresDatabase database) : SupplierTests(database), IClassFixture<PostgresDatabase>;
