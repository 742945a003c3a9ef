using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Companies;

public sealed class PostgresCompanyTests(PostgresDatabase database) : CompanyTests(database), IClassFixture<PostgresDatabase>;
