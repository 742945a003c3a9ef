using Estimator.Engine.Explanations;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Loads;

public sealed partial class DwellingLoads
{
    private Fact Add(string id, string label, Fact value, string? rule = null)
    {
        _lines.Add(rule is null ? new LoadLine(id, label, value) : new LoadLine(id, label, value, LoadArticles.Of(rule, input.Year), LoadArticles.Seen(rule, input.Year)));
        return value;
    }

    private Fact SumOf(string rule, string label, IReadOnlyList<Fact> loads) => page.Sum(rule, label, Unit.VoltAmperes, loads);

    private Fact GeneralLoad()
    {
        var lighting = Add("lighting_va", "General lighting and receptacles", page.Compute(Operation.Product, "general-lighting", "General lighting and receptacles", Unit.VoltAmperes, input.AreaSquareFeet, LoadRules.UnitLoad(input.Year).Read(page, Unit.Factor)), "unit_load");
        var small = Add("small_appliance_va", "Small-appliance circuits", page.Compute(Operation.Product, "small-appliance", "Small-appliance circuits", Unit.VoltAmperes, input.SmallApplianceCircuits, LoadRules.SmallAppliance.Read(page, Unit.VoltAmperes)), "small_appliance");
        var laundry = Add("laundry_va", "Laundry circuits", page.Compute(Operation.Product, "laundry", "Laundry circuits", Unit.VoltAmperes, input.LaundryCircuits, LoadRules.Laundry.Read(page, Unit.VoltAmperes)), "laundry");
        return Add("subtotal_va", "Lighting, small appliances and laundry", page.Compute(Operation.Sum, "general-load", "Lighting, small appliances and laundry", Unit.VoltAmperes, lighting, small, laundry));
    }

    private Fact FastenedDemand()
    {
        var connected = Add("appliances_connected_va", "Fastened appliances", page.Sum("fastened", "Fastened appliances", Unit.VoltAmperes, input.Fastened), "fastened");
        return Add("appliances_va", "Fastened appliances as counted", input.Fastened.Length >= LoadRules.FastenedCount.Number()
            ? page.Compute(Operation.PercentOf, "fastened-demand", "Four or more fastened appliances", Unit.VoltAmperes, connected, LoadRules.FastenedPercent.Read(page, Unit.Percent))
            : connected, "fastened");
    }

    private Fact EvseLoad() => page.Sum("evse", "EV supply equipment", Unit.VoltAmperes, [.. input.Evse.Select(e => Evse(page, input.Year, e))]);

    /// <summary>What a piece of EV supply equipment counts as.</summary>
    public static Fact Evse(PageWriter page, int year, Fact nameplate) => LoadRules.EvseLeast.StandsIn(year)
        ? page.Compute(Operation.Maximum, "evse-least", "EV supply equipment, the floor at least", Unit.VoltAmperes, nameplate, LoadRules.EvseLeast.Read(page, Unit.VoltAmperes))
        : nameplate;

    private Fact Nameplates() => page.Sum(
        "nameplates", "Nameplates of appliances", Unit.VoltAmperes, [.. input.Cooking, .. input.Dryers, .. input.Fastened, .. input.Evse.Select(e => Evse(page, input.Year, e))]);

    private void Neutral(Fact lighting, Fact cooking, Fact dryers)
    {
        var seventy = LoadRules.NeutralPercent.Read(page, Unit.Percent);
        var range = Add("neutral_range_va", "Cooking on the neutral", page.Compute(Operation.PercentOf, "neutral-cooking", "Cooking on the neutral", Unit.VoltAmperes, cooking, seventy), "neutral");
        var dryer = Add("neutral_dryer_va", "Dryers on the neutral", page.Compute(Operation.PercentOf, "neutral-dryers", "Dryers on the neutral", Unit.VoltAmperes, dryers, seventy), "neutral");
        var fastened = page.Sum("neutral-fastened", "120 V appliances on the neutral", Unit.VoltAmperes, input.FastenedOnNeutral);
        var counted = input.Fastened.Length >= LoadRules.FastenedCount.Number()
            ? page.Compute(Operation.PercentOf, "fastened-demand", "At their share", Unit.VoltAmperes, fastened, LoadRules.FastenedPercent.Read(page, Unit.Percent))
            : fastened;
        var motor = Add("neutral_motor_va", "Largest 120 V motor, counted further", FurtherOf("neutral-motor", input.MotorsOnNeutral), "largest_motor");
        NeutralTotal(lighting, range, dryer, counted, motor);
    }

    // The optional method has no neutral of its own: it stays by the demands of the standard one, dryers at their nameplate.
    private void OptionalNeutral()
    {
        var seventy = LoadRules.NeutralPercent.Read(page, Unit.Percent);
        var lighting = Add("neutral_lighting_va", "Lighting demand on the neutral", page.Sum("lighting-demand", "Lighting demand on the neutral", Unit.VoltAmperes, BlockDemand.Parts(page, _lines.First(l => l.Id == "subtotal_va").Value, DemandTables.Lighting)), "lighting_demand");
        var range = Add("neutral_range_va", "Cooking on the neutral", page.Compute(Operation.PercentOf, "neutral-cooking", "Cooking on the neutral", Unit.VoltAmperes, CookingDemand.Of(page, input.Cooking), seventy), "neutral");
        var dryer = Add("neutral_dryer_va", "Dryers on the neutral", page.Compute(Operation.PercentOf, "neutral-dryers", "Dryers on the neutral", Unit.VoltAmperes, page.Sum("dryers", "Dryers", Unit.VoltAmperes, input.Dryers), seventy), "neutral");
        NeutralTotal(lighting, range, dryer, page.Sum("neutral-fastened", "120 V appliances on the neutral", Unit.VoltAmperes, input.FastenedOnNeutral));
    }

    private void NeutralTotal(params ReadOnlySpan<Fact> parts)
    {
        var total = Add("neutral_total_va", "Neutral", page.Compute(Operation.Sum, "neutral", "Neutral", Unit.VoltAmperes, parts), "neutral");
        var amperes = page.Compute(Operation.Quotient, "neutral-amperes", "Neutral in amperes", Unit.Amperes, total, input.Volts);
        var over = amperes.Value - LoadRules.NeutralOver.Number();
        if (over > 0)
        {
            var limit = LoadRules.NeutralOver.Read(page, Unit.Amperes);
            var above = page.Compute(Operation.Difference, "neutral-above", "Above the limit", Unit.Amperes, amperes, limit);
            amperes = page.Compute(Operation.Sum, "neutral-reduced", "Neutral, the part above reduced", Unit.Amperes, limit, page.Compute(Operation.PercentOf, "neutral-above", "Reduced", Unit.Amperes, above, LoadRules.NeutralPercent.Read(page, Unit.Percent)));
        }

        Add("neutral_amperes", "Neutral in amperes", amperes, "neutral");
    }

    private LoadWorksheet Finish(string method, string article, bool? heatUsed, Fact load)
    {
        var total = Add("total_va", method == "feeder" ? "Load of the feeder" : "Load", load);
        var exact = Add("exact_amperes", "In amperes", page.Compute(Operation.Quotient, "load-amperes", "Load in amperes", Unit.Amperes, total, input.Volts));
        var whole = Add("amperes", "In whole amperes", WholeAmperes(page, exact), "amperes");
        // What the neutral carries stands apart, after the load itself.
        return new LoadWorksheet(method, article, [.. _lines.OrderBy(l => l.Id.StartsWith("neutral_", StringComparison.Ordinal))], total, exact, whole, heatUsed) { Notes = [.. _notes] };
    }

    /// <summary>Whole amperes: a fraction under a half is dropped, otherwise the next whole.</summary>
    public static Fact WholeAmperes(PageWriter page, Fact exact)
    {
        var kept = page.Compute(Operation.RoundDown, "ampere-fraction", "Smaller fractions dropped", Unit.Amperes, exact, LoadRules.AmpereFraction.Read(page, Unit.Amperes));
        return page.Compute(Operation.RoundUp, "whole-amperes", "Whole amperes", Unit.Amperes, kept, page.Constant("One ampere", 1, Unit.Amperes));
    }
}
