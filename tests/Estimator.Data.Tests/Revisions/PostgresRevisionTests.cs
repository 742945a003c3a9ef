using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Revisions;

public sealed class PostgresRevisionTests(PostgresDatabase database) : RevisionTests(database), IClassFixture<PostgresDatabase>;
