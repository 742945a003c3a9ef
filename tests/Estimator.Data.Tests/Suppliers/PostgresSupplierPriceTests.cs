using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Suppliers;

public sealed class PostgresSupplierPriceTests(PostgresDatabase database) : SupplierPriceTests(database), IClassFixture<PostgresDatabase>;
