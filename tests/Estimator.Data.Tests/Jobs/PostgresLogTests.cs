using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Jobs;

public sealed class PostgresLogTests(PostgresDatabase database) : LogTests(database), IClassFixture<PostgresDatabase>;
