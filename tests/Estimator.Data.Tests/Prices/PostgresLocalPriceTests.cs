using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Prices;

public sealed class PostgresLocalPriceTests(PostgresDatabase database) : LocalPriceTests(database), IClassFixture<PostgresDatabase>;
