using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Jobs;

public sealed class PostgresInterleavingTests(PostgresDatabase database) : InterleavingTests(database), IClassFixture<PostgresDatabase>;
