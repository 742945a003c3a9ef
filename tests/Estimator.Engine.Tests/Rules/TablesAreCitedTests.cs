using Estimator.Engine.Rules;

namespace Estimator.Engine.Tests.Rules;

public sealed class TablesAreCitedTests
{
    private static readonly string[] Bases = ["published", "from memory", "common practice, no source", "invented"];

    public static TheoryData<string> Tables() => [.. RuleTable.Ids];

    [Theory]
    [MemberData(nameof(Tables))]
    public void Table_OfRules_SaysUnitBasisAndSource(string id)
    {
        var table = RuleTable.Load(id);
        Assert.NotEmpty(table.File.Title);
        Assert.NotEmpty(table.File.Unit);
        Assert.NotEmpty(table.File.Source.Title);
        Assert.NotEmpty(table.File.Effective);
        Assert.All(table.Rows, r => Assert.Contains(r.Basis, Bases));
        Assert.All(table.Rows.Where(r => r.Basis == "published"), r => Assert.True(r.Source.Section.Length + r.Source.Page.Length + r.Source.Edition.Length + r.Source.Title.Length > 4));
    }

    [Fact]
    public void Read_UnknownKey_IsRefused() => Assert.Throws<InvalidDataException>(() => RuleTable.Read(
        "x", """{"id":"x","title":"t","unit":"u","basis":"published","source":{"title":"s"},"effective":"e","rows":[],"extra":1}"""));

    [Fact]
    public void Read_SameKeyTwice_IsRefused() => Assert.Throws<InvalidDataException>(() => RuleTable.Read(
        "x", """{"id":"x","title":"t","unit":"u","basis":"published","source":{"title":"s"},"effective":"e","rows":[{"key":"a","cells":{"value":1}},{"key":"a","cells":{"value":2}}]}"""));
}
