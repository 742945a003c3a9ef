using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Revisions;

public sealed class SqliteRevisionTests(SqliteDatabase database) : RevisionTests(database), IClassFixture<SqliteDatabase>;
