using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Loads;

public sealed partial class DwellingLoads
{
    // Heat and cooling never run together: each has a total of its own with the largest motor that runs beside it, and the larger total is the load.
    private (Fact Load, bool? Heat) WithHeatOrCooling(string method, Fact others, Fact heatAlone, bool motors)
    {
        var compressors = input.HeatPump ? input.Cooling : [];
        var heat = input.HeatPump ? page.Compute(Operation.Sum, "heat-pump", "Compressor and supplementary heat", Unit.VoltAmperes, SumOf("cooling", "Compressor", input.Cooling), heatAlone) : heatAlone;
        var cooling = SumOf("cooling", "Cooling", input.Cooling);
        var heatRule = motors ? "heat" : "optional_heat";
        var coolingRule = motors ? "cooling" : "optional_heat";
        if (heat.Value == 0 && cooling.Value == 0)
        {
            var motor = motors ? Add("motor_va", "Largest motor, counted further", FurtherOf("largest-motor", input.Motors), "largest_motor") : others;
            return (motors ? page.Compute(Operation.Sum, "dwelling-load", "Load", Unit.VoltAmperes, others, motor) : others, null);
        }

        Add("heat_va", input.HeatPump ? "Heat pump with its supplementary heat" : "Heat", heat, heatRule);
        List<Fact> withHeat = [others, heat];
        if (motors)
        {
            withHeat.Add(Add("heat_motor_va", "Largest motor that runs with the heat, counted further", FurtherOf("largest-motor", [.. input.Motors, .. compressors]), "largest_motor"));
        }

        var heatTotal = Add("total_with_heat_va", "Total in the heating season", SumOf("total-with-heat", "Total in the heating season", withHeat), "noncoincident");
        Add("cooling_va", "Cooling", cooling, coolingRule);
        List<Fact> withCooling = [others, cooling];
        if (motors)
        {
            withCooling.AddRange(CoolingMotors(heat, cooling));
        }

        var coolingTotal = Add("total_with_cooling_va", "Total in the cooling season", SumOf("total-with-cooling", "Total in the cooling season", withCooling), "noncoincident");
        Say(method, motors);
        return (page.Compute(Operation.Maximum, "noncoincident", "The larger of both totals", Unit.VoltAmperes, heatTotal, coolingTotal), heatTotal.Value >= coolingTotal.Value);
    }

    private IEnumerable<Fact> CoolingMotors(Fact heat, Fact cooling)
    {
        var raised = LoadRules.NoncoincidentMotorPercent.StandsIn(input.Year) && !input.HeatPump && cooling.Value > 0 && cooling.Value < heat.Value;
        if (raised)
        {
            yield return Add(
                "cooling_raise_va", "Cooling, the smaller of both, counted further",
                page.Compute(Operation.PercentOf, "noncoincident-motor", "Cooling, the smaller of both, counted further", Unit.VoltAmperes, cooling, LoadRules.NoncoincidentMotorPercent.Read(page, Unit.Percent)), "noncoincident");
        }

        // A compressor that 220.60 has raised already is not raised again as the largest motor.
        var compressor = input.Cooling.Length == 0 ? 0 : input.Cooling.Max(c => c.Value);
        ImmutableArray<Fact> candidates = !raised ? [.. input.Motors, .. input.Cooling] : input.Motors.Any(m => m.Value > compressor) ? input.Motors : [];
        yield return Add("cooling_motor_va", "Largest motor that runs with the cooling, counted further", FurtherOf("largest-motor", candidates), "largest_motor");
    }

    private Fact FurtherOf(string rule, ImmutableArray<Fact> motors) => motors.IsEmpty
        ? page.Constant("No motor", 0, Unit.VoltAmperes)
        : page.Compute(
            Operation.PercentOf, rule, "Largest motor, counted further", Unit.VoltAmperes,
            page.Compute(Operation.Maximum, rule, "Largest motor", Unit.VoltAmperes, [.. motors]), LoadRules.LargestMotorPercent.Read(page, Unit.Percent));

    private void Say(string method, bool motors)
    {
        _notes.Add($"Heat and cooling do not run together ({LoadArticles.Of("noncoincident", input.Year)}), so a total stands for each season, and the larger one is the load.");
        if (motors)
        {
            _notes.Add($"Each total takes a quarter more of the largest motor that runs in its season ({LoadArticles.Of("largest_motor", input.Year)}); a compressor is a motor.");
        }

        if (motors && LoadRules.NoncoincidentMotorPercent.StandsIn(input.Year))
        {
            _notes.Add($"From the 2023 edition cooling that is smaller than the heat is compared at 125% ({LoadArticles.Of("noncoincident", input.Year)}); that compressor is then not raised a second time as the largest motor.");
        }

        if (method == "optional" && !LoadArticles.Seen("optional_heat", input.Year))
        {
            _notes.Add("The 2026 shares of heat and cooling were not seen: those of 2023 stand here, not verified.");
        }
    }
}
