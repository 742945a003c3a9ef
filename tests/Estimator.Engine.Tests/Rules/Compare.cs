using System.Globalization;
using Estimator.Engine.Rules;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Rules;

/// <summary>Compares rule tables with the reference files.</summary>
internal static class Compare
{
    private static readonly Dictionary<string, string> DemandNames = new(StringComparer.Ordinal)
    {
        ["cooking_demand"] = "220.55",
        ["dryer_demand"] = "220.54",
        ["lighting_demand"] = "220.42/220.45 dwelling",
        ["optional_demand_2017"] = "220.82 (2017-2023)",
        ["existing_demand"] = "220.83 (2017-2023)",
        ["optional_demand_2026"] = "120.82 (2026)",
    };

    internal static bool Knows(string table) => table is "conductors" or "box_allowances" or "box_volumes" || DemandNames.ContainsKey(table);

    internal static void Table(RuleTable table)
    {
        switch (table.Id)
        {
            case "conductors":
                Conductors(table);
                break;
            case "box_allowances":
                BoxAllowances(table);
                break;
            case "box_volumes":
                BoxVolumes(table);
                break;
            default:
                Demand(table);
                break;
        }
    }

    internal static void Conductors(RuleTable table)
    {
        var rows = ReferenceCsv.Read(TestData.Reference("conductors.csv"));
        Assert.Equal(rows.Select(r => r["awg"]), table.Rows.Select(r => r.Key));
        foreach (var row in rows)
        {
            foreach (var (column, text) in row.Where(c => c.Key is not ("awg" or "source" or "verified")))
            {
                Cell(table[row["awg"]], column, text);
            }
        }
    }

    internal static void BoxAllowances(RuleTable table)
    {
        var rows = ReferenceCsv.Read(TestData.Reference("box_fill.csv")).Where(r => r["kind"] == "allowance_per_conductor").ToList();
        Assert.Equal(rows.Select(r => r["awg"]), table.Rows.Select(r => r.Key));
        foreach (var row in rows)
        {
            Cell(table[row["awg"]], "volume_in3", row["volume_in3"]);
            Cell(table[row["awg"]], "volume_cm3", row["volume_cm3"]);
        }
    }

    internal static void BoxVolumes(RuleTable table)
    {
        var rows = ReferenceCsv.Read(TestData.Reference("box_fill.csv")).Where(r => r["kind"] == "metal_box").ToList();
        Assert.Equal(rows.Count, table.Rows.Length);
        for (var i = 0; i < rows.Count; i++)
        {
            foreach (var column in new[] { "box_type", "trade_size_in", "volume_in3", "volume_cm3", "max_18", "max_16", "max_14", "max_12", "max_10", "max_8", "max_6", "note" })
            {
                Cell(table.Rows[i], column, rows[i][column]);
            }
        }
    }

    internal static void Demand(RuleTable table)
    {
        var rows = ReferenceCsv.Read(TestData.Reference("load_calc_tables.csv")).Where(r => r["table"] == DemandNames[table.Id]).ToList();
        Assert.Equal(rows.Count, table.Rows.Length);
        for (var i = 0; i < rows.Count; i++)
        {
            foreach (var (column, text) in rows[i].Where(c => c.Key is not ("table" or "source" or "verified")))
            {
                Cell(table.Rows[i], column, text);
            }
        }
    }

    private static void Cell(RuleRow row, string column, string text)
    {
        if (text.Length == 0)
        {
            Assert.True(!row.Has(column) || row.Text(column).Length == 0, $"{row.Table.Id} {row.Key} {column} is not blank.");
        }
        else if (decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && column is not ("note" or "trade_size_in"))
        {
            Assert.Equal(number, row.Number(column));
        }
        else
        {
            Assert.Equal(text, row.Text(column));
        }
    }
}
