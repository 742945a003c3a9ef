using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Actuals;

public sealed class PostgresActualsTests(PostgresDatabase database) : ActualsTests(database), IClassFixture<PostgresDatabase>;
