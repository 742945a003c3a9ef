using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Orders;

public sealed class PostgresOrderTests(PostgresDatabase database) : OrderTests(database), IClassFixture<PostgresDatabase>;
