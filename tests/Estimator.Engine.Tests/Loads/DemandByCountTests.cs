using Estimator.Engine.Explanations;
using Estimator.Engine.Loads;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Loads;

/// <summary>Every row of the demand tables of load_calc_tables.csv, worked through the engine at both ends of the row.</summary>
public sealed class DemandByCountTests
{
    private readonly PageWriter _page = new(1);

    // Column A by 3 kW, B by 6 kW and C by 10 kW appliances; C without a raise, which begins over 12 kW.
    [Theory]
    [MemberData(nameof(CookingRows))]
    public void Cooking_EachRow_IsTheTables(int count, decimal a, decimal b, decimal columnC)
    {
        Assert.Equal(count * 3000m * a / 100m, CookingDemand.ByNoteThree(_page, Alike(count, 3000)).Single().Value);
        Assert.Equal(count * 6000m * b / 100m, CookingDemand.ByNoteThree(_page, Alike(count, 6000)).Single().Value);
        Assert.Equal(columnC * 1000m, CookingDemand.Of(_page, Alike(count, 10_000)).Value);
    }

    // NEC table 220.55 column C, worked from its text: 15 kW + 1 each to 40, 25 kW + 3/4 kW each from 41.
    [Theory]
    [InlineData(26, 41000)]
    [InlineData(40, 55000)]
    [InlineData(41, 55750)]
    [InlineData(60, 70000)]
    [InlineData(61, 70750)]
    [InlineData(100, 100000)]
    public void ColumnC_ManyRanges_FollowsTheLastRows(int count, int va) => Assert.Equal(va, CookingDemand.Of(_page, Alike(count, 12_000)).Value);

    // Note 1: 30 ranges of 14 kW, column C 45 kW raised by 2 x 5% = 49.5 kW.
    [Fact]
    public void ColumnC_ThirtyLargerRanges_IsRaisedWhole() => Assert.Equal(49_500m, CookingDemand.Of(_page, Alike(30, 14_000)).Value);

    [Theory]
    [MemberData(nameof(DryerRows))]
    public void Dryers_EachRow_IsTheTables(int count, decimal percent) => Assert.Equal(count * 6000m * percent / 100m, DryerDemand.Of(_page, Alike(count, 6000)).Value);

    public static TheoryData<int, decimal, decimal, decimal> CookingRows()
    {
        var data = new TheoryData<int, decimal, decimal, decimal>();
        foreach (var row in Reference("220.55"))
        {
            foreach (var count in Ends(row))
            {
                data.Add(count, Number(row["column_a_percent"]), Number(row["column_b_percent"]), Number(row["column_c_kw_base"]) + count * Number(row["column_c_kw_per_unit"]));
            }
        }

        return data;
    }

    public static TheoryData<int, decimal> DryerRows()
    {
        var data = new TheoryData<int, decimal>();
        foreach (var row in Reference("220.54"))
        {
            foreach (var count in Ends(row))
            {
                data.Add(count, Number(row["percent"]));
            }
        }

        return data;
    }

    private static IEnumerable<IReadOnlyDictionary<string, string>> Reference(string table) => ReferenceCsv.Read(TestData.Reference("load_calc_tables.csv")).Where(r => r["table"] == table);

    // The last row is open; 70 stands for what lies beyond.
    private static IEnumerable<int> Ends(IReadOnlyDictionary<string, string> row) =>
        new[] { (int)Number(row["from_count"]), row["to_count"].Length > 0 ? (int)Number(row["to_count"]) : 70 }.Distinct();

    private static decimal Number(string text) => text.Length == 0 ? 0 : decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private List<Fact> Alike(int count, int va) => [.. Enumerable.Range(0, count).Select(i => _page.Given($"$.appliance[{i}]", "appliance", va, Unit.VoltAmperes))];
}
