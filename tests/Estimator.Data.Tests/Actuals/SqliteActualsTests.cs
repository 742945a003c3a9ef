using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Actuals;

public sealed class SqliteActualsTests(SqliteDatabase database) : ActualsTests(database), IClassFixture<SqliteDatabase>;
