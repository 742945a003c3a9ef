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

    /// <summary>The standard method, part III.</summary>
    public LoadWorksheet Standard()
    {
        _lines.Clear();
        var general = GeneralLoad();
        var demand = Add("after_demand_va", "After demand", page.Sum("lighting-demand", "After demand", Unit.VoltAmperes, BlockDemand.Parts(page, general, DemandTables.Lighting)));
        var cooking = Add("cooking_va", "Cooking", CookingDemand.Of(page, input.Cooking));
        var dryers = Add("dryer_va", "Dryers", DryerDemand.Of(page, input.Dryers));
        var fastened = FastenedDemand();
        var evse = Add("evse_va", "EV supply equipment", EvseLoad());
        var (heat, used) = LargerOfHeatAndCooling(page.Sum("heat", "Heat", Unit.VoltAmperes, input.SpaceHeat), page.Sum("cooling", "Cooling", Unit.VoltAmperes, input.Cooling));
        Neutral(demand, cooking, dryers);
        return Finish("standard", LoadRules.Article(input.Year, " part III"), used, demand, cooking, dryers, fastened, evse, heat);
    }

    /// <summary>The optional method.</summary>
    public LoadWorksheet Optional()
    {
        _lines.Clear();
        var general = Add("general_total_va", "General loads", page.Compute(Operation.Sum, "optional-general", "General loads", Unit.VoltAmperes, GeneralLoad(), Nameplates()));
        var blocks = BlockDemand.Parts(page, general, DemandTables.Optional(input.Year));
        Add("first_block_va", "First block", blocks[0]);
        Add("remainder_va", "Rest", blocks.Length > 1 ? blocks[1] : page.Constant("No rest", 0, Unit.VoltAmperes));
        var demand = Add("general_demand_va", "Demand of general loads", page.Sum("optional-demand", "Demand of general loads", Unit.VoltAmperes, blocks));
        var heatAll = page.Sum("heat", "Heat", Unit.VoltAmperes, input.SpaceHeat);
        var share = input.HeatPump ? LoadRules.SupplementaryHeatPercent : input.HeatControls >= LoadRules.HeatManyCount.Number() ? LoadRules.HeatManyPercent : LoadRules.HeatFewPercent;
        var heat = page.Compute(Operation.PercentOf, "optional-heat", "Heat at its share", Unit.VoltAmperes, heatAll, share.Read(page, Unit.Percent));
        var cooling = page.Sum("cooling", "Cooling", Unit.VoltAmperes, input.Cooling);
        var heating = input.HeatPump ? page.Compute(Operation.Sum, "optional-heat", "Compressor and supplementary heat", Unit.VoltAmperes, cooling, heat) : heat;
        var (larger, used) = LargerOfHeatAndCooling(heating, cooling);
        OptionalNeutral();
        return Finish("optional", LoadRules.Article(input.Year, ".82"), used, demand, larger);
    }

    /// <summary>An existing dwelling: without new heat or cooling (A), with (B).</summary>
    public LoadWorksheet Existing()
    {
        _lines.Clear();
        var added = input.NewHeatOrCooling;
        var heatOrCooling = page.Compute(
            Operation.Maximum, "existing-heat", "Larger of heat and cooling", Unit.VoltAmperes, page.Sum("heat", "Heat", Unit.VoltAmperes, input.SpaceHeat), page.Sum("cooling", "Cooling", Unit.VoltAmperes, input.Cooling));
        var others = page.Compute(Operation.Sum, "existing-others", "General loads and nameplates", Unit.VoltAmperes, GeneralLoad(), Nameplates());
        var counted = Add("other_total_va", "Loads in blocks", added.IsEmpty ? page.Compute(Operation.Sum, "existing-others", "All loads", Unit.VoltAmperes, others, heatOrCooling) : others);
        var blocks = BlockDemand.Parts(page, counted, DemandTables.Existing);
        Add("first_block_va", "First block", blocks[0]);
        Add("remainder_va", "Rest", blocks.Length > 1 ? blocks[1] : page.Constant("No rest", 0, Unit.VoltAmperes));
        var demand = Add("other_demand_va", "Demand of those loads", page.Sum("existing-demand", "Demand of those loads", Unit.VoltAmperes, blocks));
        var fresh = added.IsEmpty
            ? page.Constant("No new heat or cooling", 0, Unit.VoltAmperes)
            : page.Compute(Operation.Maximum, "existing-new", "New heat or cooling, with what it joins the larger", Unit.VoltAmperes, page.Sum("existing-new", "New heat or cooling", Unit.VoltAmperes, added), heatOrCooling);
        Add("new_heat_or_cooling_va", "New heat or cooling", fresh);
        return Finish("existing", LoadRules.Article(input.Year, added.IsEmpty ? ".83(A)" : ".83(B)"), null, demand, fresh);
    }

    /// <summary>Measured demand with new load.</summary>
    /// <param name="measured">The year's highest demand.</param>
    /// <param name="added">New loads.</param>
    public LoadWorksheet Measured(Fact measured, IReadOnlyList<Fact> added)
    {
        _lines.Clear();
        var raised = Add("measured_va", "Measured demand at its share", page.Compute(Operation.PercentOf, "measured-demand", "Measured demand at its share", Unit.VoltAmperes, measured, LoadRules.MeasuredPercent.Read(page, Unit.Percent)));
        var fresh = Add("new_load_va", "New load", page.Sum("measured-new", "New load", Unit.VoltAmperes, added));
        return Finish("measured", LoadRules.Article(input.Year, ".87"), null, raised, fresh);
    }
}
