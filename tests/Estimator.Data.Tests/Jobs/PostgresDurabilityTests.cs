using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Jobs;

public sealed class PostgresDurabilityTests(PostgresDatabase database) : DurabilityTests(database), IClassFixture<PostgresDatabase>;
