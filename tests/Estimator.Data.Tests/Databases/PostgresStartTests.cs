namespace Estimator.Data.Tests.Databases;

public sealed class PostgresStartTests(PostgresDatabase database) : StartTests(database), IClassFixture<PostgresDatabase>;
