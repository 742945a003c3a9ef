using Estimator.Engine.Rules;

namespace Estimator.Engine.Tests.Rules;

/// <summary>The rule data equals our collection of published figures, cell by cell and row by row. Sources stand in the CSV files.</summary>
public sealed class TablesEqualReferenceTests
{
    [Fact]
    public void Conductors_EqualReference_CellByCell() => Compare.Conductors(RuleTable.Load("conductors"));

    [Fact]
    public void Boxes_EqualReference_CellByCell()
    {
        Compare.BoxAllowances(RuleTable.Load("box_allowances"));
        Compare.BoxVolumes(RuleTable.Load("box_volumes"));
    }

    [Theory]
    [InlineData("cooking_demand")]
    [InlineData("dryer_demand")]
    [InlineData("lighting_demand")]
    [InlineData("optional_demand_2017")]
    [InlineData("existing_demand")]
    [InlineData("optional_demand_2026")]
    public void LoadTables_EqualReference_CellByCell(string id) => Compare.Demand(RuleTable.Load(id));
}
