using Estimator.Data.Tests.Databases;

namespace Estimator.Data.Tests.Companies;

public sealed class SqliteCompanyTests(SqliteDatabase database) : CompanyTests(database), IClassFixture<SqliteDatabase>;
