using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Jobs;

public sealed class PostgresJobStoreTests(PostgresDatabase database) : JobStoreTests(database), IClassFixture<PostgresDatabase>;
