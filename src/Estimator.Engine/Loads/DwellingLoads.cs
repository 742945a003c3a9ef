using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Loads;

/// <summary>Load of a dwelling by the standard, optional, existing-dwelling and measured methods.</summary>
/// <remarks>
/// Not modelled: feeders of several dwellings, loads held back by energy management. The existing-dwelling method of 2026 is not known and is
/// shown by the blocks of 2023, not verified. Source: NEC article 220, in 2026 article 120.
/// </remarks>
public sealed partial class DwellingLoads(PageWriter page, LoadInput input)
{
    private readonly List<LoadLine> _lines = [];

    private readonly List<string> _notes = [];

    /// <summary>The standard method, part III.</summary>
    public LoadWorksheet Standard()
    {
        Begin();
        var (others, demand, cooking, dryers) = StandardDemands();
        var (load, used) = WithHeatOrCooling("standard", others, SumOf("heat", "Heat", input.SpaceHeat), motors: true);
        Neutral(demand, cooking, dryers);
        return Finish("standard", LoadRules.Article(input.Year, " part III"), used, load);
    }

    /// <summary>A feeder: the standard method's demands for what it feeds, and what its breaker and conductors must carry.</summary>
    /// <param name="continuous">Loads of three hours or more on it, heat and cooling left out.</param>
    public LoadWorksheet Feeder(ImmutableArray<Fact> continuous)
    {
        Begin();
        var (others, demand, cooking, dryers) = StandardDemands();
        var (load, used) = WithHeatOrCooling("feeder", others, SumOf("heat", "Heat", input.SpaceHeat), motors: true);
        Neutral(demand, cooking, dryers);
        var more = page.Compute(Operation.PercentOf, "feeder-continuous", "Continuous loads again, at their further share", Unit.VoltAmperes, SumOf("continuous", "Continuous loads", continuous), LoadRules.ContinuousMorePercent.Read(page, Unit.Percent));
        Add("continuous_more_va", "Continuous loads, counted further", more, "feeder_sizing");
        var sized = page.Compute(Operation.Sum, "feeder-sizing", "Load with the continuous part at its share", Unit.VoltAmperes, load, more);
        Add("sizing_amperes", "What breaker and conductors carry at least", page.Compute(Operation.Quotient, "feeder-sizing", "What breaker and conductors carry at least", Unit.Amperes, sized, input.Volts), "feeder_sizing");
        return Finish("feeder", LoadArticles.Of("feeder", input.Year), used, load);
    }

    /// <summary>The optional method.</summary>
    public LoadWorksheet Optional()
    {
        Begin();
        var general = Add("general_total_va", "General loads", page.Compute(Operation.Sum, "optional-general", "General loads", Unit.VoltAmperes, GeneralLoad(), Nameplates()), "optional_general");
        var demand = Blocks(general, DemandTables.Optional(input.Year), "general_demand_va", "Demand of general loads", "optional_general");
        var share = input.HeatPump ? LoadRules.SupplementaryHeatPercent : input.HeatControls >= LoadRules.HeatManyCount.Number() ? LoadRules.HeatManyPercent : LoadRules.HeatFewPercent;
        var heat = page.Compute(Operation.PercentOf, "optional-heat", "Heat at its share", Unit.VoltAmperes, SumOf("heat", "Heat", input.SpaceHeat), share.Read(page, Unit.Percent));
        var (load, used) = WithHeatOrCooling("optional", demand, heat, motors: false);
        OptionalNeutral();
        return Finish("optional", LoadRules.Article(input.Year, ".82"), used, load);
    }

    /// <summary>An existing dwelling: without new heat or cooling (A), with (B).</summary>
    public LoadWorksheet Existing()
    {
        Begin();
        var added = input.NewHeatOrCooling;
        var rule = added.IsEmpty ? "existing_a" : "existing_b";
        var heatOrCooling = page.Compute(Operation.Maximum, "existing-heat", "Larger of heat and cooling", Unit.VoltAmperes, SumOf("heat", "Heat", input.SpaceHeat), SumOf("cooling", "Cooling", input.Cooling));
        var others = page.Compute(Operation.Sum, "existing-others", "General loads and nameplates", Unit.VoltAmperes, GeneralLoad(), Nameplates());
        Add("heat_or_cooling_va", "Larger of heat and cooling", heatOrCooling, "noncoincident");
        var counted = Add("other_total_va", "Loads in blocks", added.IsEmpty ? page.Compute(Operation.Sum, "existing-others", "All loads", Unit.VoltAmperes, others, heatOrCooling) : others, rule);
        var demand = Blocks(counted, DemandTables.Existing, "other_demand_va", "Demand of those loads", rule);
        var fresh = added.IsEmpty
            ? page.Constant("No new heat or cooling", 0, Unit.VoltAmperes)
            : page.Compute(Operation.Maximum, "existing-new", "New heat or cooling, with what it joins the larger", Unit.VoltAmperes, SumOf("existing-new", "New heat or cooling", added), heatOrCooling);
        Add("new_heat_or_cooling_va", "New heat or cooling", fresh, rule);
        _notes.Add(added.IsEmpty
            ? $"No heat or cooling is new, so all loads go through the blocks, the larger of heat and cooling with them: {LoadArticles.Of(rule, input.Year)}."
            : $"Heat or cooling is new, so the larger of heat and cooling counts in full beside the blocks: {LoadArticles.Of(rule, input.Year)}.");
        if (!LoadArticles.Seen(rule, input.Year))
        {
            _notes.Add("The table of the 2026 edition was not seen: the blocks of 2023 stand here, not verified. A measured demand decides more surely.");
        }

        return Finish("existing", LoadRules.Article(input.Year, added.IsEmpty ? ".83(A)" : ".83(B)"), null, page.Compute(Operation.Sum, "dwelling-load", "Load of the dwelling", Unit.VoltAmperes, demand, fresh));
    }

    /// <summary>Measured demand with new load.</summary>
    /// <param name="measured">The year's highest demand.</param>
    /// <param name="added">New loads.</param>
    public LoadWorksheet Measured(Fact measured, IReadOnlyList<Fact> added)
    {
        Begin();
        var raised = Add("measured_va", "Measured demand at its share", page.Compute(Operation.PercentOf, "measured-demand", "Measured demand at its share", Unit.VoltAmperes, measured, LoadRules.MeasuredPercent.Read(page, Unit.Percent)), "measured");
        var fresh = Add("new_load_va", "New load", page.Sum("measured-new", "New load", Unit.VoltAmperes, added), "measured");
        _notes.Add("The demand is the highest of a year, or of 30 days recorded at the heaviest time with what heats or cools in the other season added.");
        return Finish("measured", LoadRules.Article(input.Year, ".87"), null, page.Compute(Operation.Sum, "dwelling-load", "Load of the dwelling", Unit.VoltAmperes, raised, fresh));
    }

    private (Fact Others, Fact Lighting, Fact Cooking, Fact Dryers) StandardDemands()
    {
        var general = GeneralLoad();
        var demand = Add("after_demand_va", "After demand", page.Sum("lighting-demand", "After demand", Unit.VoltAmperes, BlockDemand.Parts(page, general, DemandTables.Lighting)), "lighting_demand");
        var cooking = Add("cooking_va", "Cooking", CookingDemand.Of(page, input.Cooking), "cooking");
        var dryers = Add("dryer_va", "Dryers", DryerDemand.Of(page, input.Dryers), "dryers");
        var fastened = FastenedDemand();
        var evse = Add("evse_va", "EV supply equipment", EvseLoad(), "evse");
        return (page.Compute(Operation.Sum, "standard-others", "All but heat and cooling", Unit.VoltAmperes, demand, cooking, dryers, fastened, evse), demand, cooking, dryers);
    }

    private Fact Blocks(Fact load, IReadOnlyList<RuleRow> table, string id, string label, string rule)
    {
        var blocks = BlockDemand.Parts(page, load, table);
        Add("first_block_va", "First block", blocks[0], rule);
        Add("remainder_va", "Rest", blocks.Length > 1 ? blocks[1] : page.Constant("No rest", 0, Unit.VoltAmperes), rule);
        return Add(id, label, page.Sum("blocks-demand", label, Unit.VoltAmperes, blocks), rule);
    }

    private void Begin()
    {
        _lines.Clear();
        _notes.Clear();
    }
}
