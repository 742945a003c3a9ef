using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Circuits;

namespace Estimator.Engine.Checks;

/// <summary>Breaker and conductors of equipment follow its load, its duty and its nameplate.</summary>
/// <remarks>Source: NEC 210.19(A)(3), 210.20(A), 422.11(E), 422.12, 422.13, 440.4, 625.42.</remarks>
internal static class EquipmentCircuits
{
    internal static IEnumerable<Finding> Judge(CheckContext context) => context.Fed().SelectMany(f =>
        Range(context, f.Equipment, f.Circuit).Concat(Continuous(context, f.Equipment, f.Circuit)).Concat(Device(context, f.Equipment, f.Circuit))
            .Concat(Nameplate(context, f.Equipment, f.Circuit)).Concat(Heating(context, f.Equipment, f.Circuit)));

    private static IEnumerable<Finding> Range(CheckContext context, LaidEquipment range, Circuit circuit)
    {
        if (range.Source.Kind is not EquipmentKind.Range || range.LoadVa.Value < PlacingLimits.RangeFrom.Number() || context.Rule("range-circuit") is not { } rule)
        {
            return [];
        }

        var least = context.Limit(rule.Code, PlacingLimits.RangeLeast);
        return context.Ask(
            rule, circuit.BreakerA.Value >= least,
            () => $"{ServiceReceptacles.Named(range)} of {range.LoadVa.Value:0} VA is on a {circuit.BreakerA.Value:0} A breaker; {least:0} A is the least.", [circuit.Id, range.Source.Id]);
    }

    private static IEnumerable<Finding> Continuous(CheckContext context, LaidEquipment equipment, Circuit circuit)
    {
        var key = equipment.Source.Kind switch { EquipmentKind.WaterHeater => "continuous-water-heater", EquipmentKind.EvCharger => "continuous-ev", _ => "continuous-load" };
        if (!EquipmentDefaults.For(equipment.Source.Kind).Flag("continuous") || context.Rule(key) is not { } rule)
        {
            return [];
        }

        var needed = Amperes(equipment) * StandardBreakers.ContinuousPercent.Number() / 100;
        return context.Ask(
            rule, circuit.BreakerA.Value >= needed,
            () => $"{ServiceReceptacles.Named(equipment)} takes {Amperes(equipment):0.#} A for hours; its breaker must be {needed:0.#} A or more and is {circuit.BreakerA.Value:0} A.", [circuit.Id, equipment.Source.Id]);
    }

    private static IEnumerable<Finding> Device(CheckContext context, LaidEquipment appliance, Circuit circuit)
    {
        if (appliance.Source.Kind is not (EquipmentKind.WaterHeater or EquipmentKind.Oven or EquipmentKind.Cooktop or EquipmentKind.Other)
            || circuit.Kind is not CircuitKind.Individual || context.Rule("appliance-device") is not { } rule)
        {
            return [];
        }

        var amperes = Amperes(appliance);
        var most = appliance.Source.MaximumOvercurrentDeviceA is { } marked ? marked.ToAmperes()
            : amperes <= PlacingLimits.ApplianceSmallTo.Number() ? PlacingLimits.ApplianceSmall.Number()
            : StandardBreakers.AtLeast(amperes * AmpacityRules.AppliancePercent / 100).Number();
        return context.Ask(
            rule, circuit.BreakerA.Value <= most,
            () => $"{ServiceReceptacles.Named(appliance)} takes {amperes:0.#} A and is on a {circuit.BreakerA.Value:0} A breaker; {most:0} A is the most.", [circuit.Id, appliance.Source.Id]);
    }

    private static IEnumerable<Finding> Nameplate(CheckContext context, LaidEquipment unit, Circuit circuit)
    {
        if (unit.Source.Kind is not (EquipmentKind.AirConditioner or EquipmentKind.HeatPump) || context.Rule("nameplate") is not { } rule)
        {
            yield break;
        }

        context.Applies(rule);
        var (name, source) = (ServiceReceptacles.Named(unit), unit.Source);
        if (source.MinimumCircuitAmpacityA is null || source.MaximumOvercurrentDeviceA is null)
        {
            yield return context.Asked(
                rule, $"The nameplate of {name} is not stated; its conductors follow the minimum circuit ampacity on it, and its breaker the largest device that it names. State both before it is wired.", [source.Id], Severity.Advice);
        }

        if (source.MaximumOvercurrentDeviceA is { } most && circuit.BreakerA.Value > most.ToAmperes())
        {
            yield return context.Asked(rule, $"{name} is on a {circuit.BreakerA.Value:0} A breaker; its nameplate allows {most.ToAmperes():0} A at most.", [circuit.Id, source.Id]);
        }

        if (source.MinimumCircuitAmpacityA is { } least && Conductors.For(circuit.Wire).Number("ampacity_cu_60C") < least.ToAmperes())
        {
            yield return context.Asked(rule, $"{circuit.Wire} AWG to {name} carries {Conductors.For(circuit.Wire).Number("ampacity_cu_60C"):0} A; its nameplate asks for {least.ToAmperes():0.#} A.", [circuit.Id, source.Id]);
        }
    }

    private static IEnumerable<Finding> Heating(CheckContext context, LaidEquipment furnace, Circuit circuit) =>
        furnace.Source.Kind is not EquipmentKind.Furnace || context.Rule("heating-circuit") is not { } rule
            ? []
            : context.Ask(
                rule, circuit.Kind is CircuitKind.Individual,
                () => $"{ServiceReceptacles.Named(furnace)} shares circuit {circuit.Name}; central heating has a circuit of its own.", [furnace.Source.Id, circuit.Id]);

    private static decimal Amperes(LaidEquipment equipment) => equipment.LoadVa.Value / equipment.Volts.Value;
}
