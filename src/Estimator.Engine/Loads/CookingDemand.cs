using Estimator.Engine.Explanations;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Loads;

/// <summary>Demand of cooking appliances.</summary>
/// <remarks>
/// Column C for the whole group, raised by notes 1 and 2, against columns A and B each for its own members by note 3; the lower is taken.
/// Source: NEC table 220.55 with its notes.
/// </remarks>
public static class CookingDemand
{
    private const decimal VaPerKilowatt = 1000m;

    /// <summary>The demand in volt-amperes.</summary>
    public static Fact Of(PageWriter page, IReadOnlyList<Fact> appliances)
    {
        if (appliances.Count == 0)
        {
            return page.Constant("No cooking appliances", 0, Unit.VoltAmperes);
        }

        var large = appliances.Where(a => a.Value > Va(LoadRules.CookingCFrom)).ToList();
        var small = appliances.Where(a => a.Value <= Va(LoadRules.CookingCFrom)).ToList();
        var together = ColumnC(page, appliances);
        if (small.Count == 0)
        {
            return together;
        }

        List<Fact> parts = [];
        if (large.Count > 0)
        {
            parts.Add(ColumnC(page, large));
        }

        parts.AddRange(ByNoteThree(page, small));
        var apart = page.Sum("cooking-note-3", "Each column for its own appliances", Unit.VoltAmperes, parts);
        return page.Compute(Operation.Minimum, "cooking-lower", "The lower of both ways", Unit.VoltAmperes, apart, together);
    }

    /// <summary>Columns A and B for appliances to 8-3/4 kW, those at or under 1-3/4 kW at their nameplate.</summary>
    public static IEnumerable<Fact> ByNoteThree(PageWriter page, IReadOnlyList<Fact> appliances)
    {
        foreach (var nameplate in appliances.Where(a => a.Value <= Va(LoadRules.CookingFrom)))
        {
            yield return nameplate;
        }

        foreach (var (column, group) in new[]
        {
            ("column_a_percent", appliances.Where(a => a.Value > Va(LoadRules.CookingFrom) && a.Value < Va(LoadRules.CookingBFrom)).ToList()),
            ("column_b_percent", appliances.Where(a => a.Value >= Va(LoadRules.CookingBFrom)).ToList()),
        })
        {
            if (group.Count > 0)
            {
                var connected = page.Sum("cooking-connected", "Connected load of the group", Unit.VoltAmperes, group);
                yield return page.Compute(
                    Operation.PercentOf, "cooking-column", column == "column_a_percent" ? "Column A" : "Column B", Unit.VoltAmperes, connected,
                    DemandTables.Cooking(group.Count).Read(page, Unit.Percent, column));
            }
        }
    }

    /// <summary>Column C for a number of appliances, before any raise.</summary>
    public static Fact ColumnCBase(PageWriter page, int count)
    {
        var row = DemandTables.Cooking(count);
        var each = page.Compute(Operation.Product, "cooking-column-c", "For each appliance", Unit.VoltAmperes, row.Read(page, Unit.Factor, "column_c_kw_per_unit"), page.Constant("Appliances", count, Unit.Each));
        var kilowatts = page.Compute(Operation.Sum, "cooking-column-c", "Column C in kilowatts", Unit.VoltAmperes, row.Read(page, Unit.Factor, "column_c_kw_base"), each);
        return page.Compute(Operation.Product, "cooking-column-c", "Column C", Unit.VoltAmperes, kilowatts, page.Constant("VA of a kilowatt", (int)VaPerKilowatt));
    }

    private static Fact ColumnC(PageWriter page, IReadOnlyList<Fact> appliances)
    {
        var start = ColumnCBase(page, appliances.Count);
        var to = Va(LoadRules.CookingCTo);
        if (appliances.Max(a => a.Value) <= to)
        {
            return start;
        }

        // Ratings under 12 kW count as 12 in the average, note 2; equal ratings give the same by note 1.
        var limit = page.Compute(Operation.Product, "cooking-limit", "12 kW", Unit.VoltAmperes, LoadRules.CookingCTo.Read(page, Unit.Factor), page.Constant("VA of a kilowatt", (int)VaPerKilowatt));
        List<Fact> counted = [.. appliances.Where(a => a.Value > Va(LoadRules.CookingCFrom)).Select(a => page.Compute(Operation.Maximum, "cooking-rating", "Rating, 12 kW at least", Unit.VoltAmperes, a, limit))];
        var sum = page.Sum("cooking-average", "Ratings together", Unit.VoltAmperes, counted);
        var average = page.Compute(Operation.Quotient, "cooking-average", "Average rating", Unit.VoltAmperes, sum, page.Constant("Appliances", counted.Count, Unit.Each));
        var above = page.Compute(Operation.Difference, "cooking-above", "Above 12 kW", Unit.VoltAmperes, average, limit);
        var steps = page.Compute(
            Operation.RoundNearest, "cooking-steps", "Whole kilowatts above, a major fraction as one", Unit.Each,
            page.Compute(Operation.Quotient, "cooking-steps", "Kilowatts above", Unit.Each, above, page.Constant("VA of a kilowatt", (int)VaPerKilowatt)), page.Constant("One", 1, Unit.Each));
        var raise = page.Compute(Operation.Product, "cooking-raise", "Raise", Unit.Percent, steps, LoadRules.CookingRaisePercent.Read(page, Unit.Percent));
        return page.Compute(Operation.Sum, "cooking-raised", "Column C raised", Unit.VoltAmperes, start, page.Compute(Operation.PercentOf, "cooking-raise", "Raise of column C", Unit.VoltAmperes, start, raise));
    }

    private static decimal Va(RuleRow kilowatts) => kilowatts.Number() * VaPerKilowatt;
}
