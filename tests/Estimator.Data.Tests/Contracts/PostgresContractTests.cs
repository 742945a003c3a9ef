using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Contracts;

public sealed class PostgresContractTests(PostgresDatabase database) : ContractTests(database), IClassFixture<PostgresDatabase>;
