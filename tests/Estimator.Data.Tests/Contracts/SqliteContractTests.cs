using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Contracts;

public sealed class SqliteContractTests(SqliteDatabase database) : ContractTests(database), IClassFixture<SqliteDatabase>;
