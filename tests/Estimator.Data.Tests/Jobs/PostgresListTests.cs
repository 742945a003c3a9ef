using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Jobs;

public sealed class PostgresListTests(PostgresDatabase database) : ListTests(database), IClassFixture<PostgresDatabase>;
