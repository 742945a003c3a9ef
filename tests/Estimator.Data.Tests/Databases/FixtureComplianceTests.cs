using System.Reflection;

namespace Estimator.Data.Tests.Databases;

/// <summary>No test of the stores runs on one database alone.</summary>
public sealed class FixtureComplianceTests
{
    private const BindingFlags Any = BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic;
    private static readonly Type[] Fixtures = [.. Types().Where(t => t.IsSubclassOf(typeof(TestDatabase)))];

    [Fact]
    public void Fixtures_AreBothDatabases() => Assert.Equal([typeof(PostgresDatabase), typeof(SqliteDatabase)], Fixtures.OrderBy(f => f.Name));

    [Fact]
    public void TestClasses_OnADatabase_RunOnEach()
    {
        var shared = Types().Where(t => t.IsAbstract && t.GetConstructors(Any).Any(c => c.GetParameters().Any(p => p.ParameterType == typeof(TestDatabase)))).ToList();
        Assert.True(shared.Count >= 5, $"{shared.Count} classes");
        Assert.All(shared, test => Assert.All(Fixtures, fixture => Assert.Single(
            Types(), t => t.IsSubclassOf(test) && t.IsAssignableTo(typeof(IClassFixture<>).MakeGenericType(fixture)))));
    }

    private static Type[] Types() => typeof(FixtureComplianceTests).Assembly.GetTypes();
}
