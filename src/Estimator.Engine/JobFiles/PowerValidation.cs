using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.JobFiles;

/// <summary>Refuses panels, circuits and nameplates that no dwelling has.</summary>
internal static class PowerValidation
{
    private const int LeastAmperes = 1;
    private const int LeastPanelAmperes = 15;
    private const int LeastServiceAmperes = 30;
    private const int MostServiceFeet = 500;
    private const int MostGroundRods = 20;

    internal static void Check(Job job, ProblemList problems)
    {
        foreach (var (panel, p) in job.Panels.Select((x, i) => (x, i)))
        {
            Panel(panel, $"$.panels[{p}]", problems);
        }

        if (job.Service is { } service)
        {
            Service(service, problems);
        }

        foreach (var (equipment, e) in job.Equipment.Select((x, i) => (x, i)))
        {
            Equipment(equipment, $"$.equipment[{e}]", problems);
        }

        foreach (var (pin, c) in job.Pins.Circuits.Select((x, i) => (x, i)))
        {
            problems.Range($"$.pins.circuits[{c}].breaker_a", pin.BreakerA?.ToAmperes(), StandardBreakers.Smallest, JobLimits.PanelAmperes, "amperes");
        }
    }

    private static void Panel(Panel panel, string path, ProblemList problems)
    {
        problems.Range($"{path}.rating_a", panel.RatingA.ToAmperes(), LeastPanelAmperes, JobLimits.PanelAmperes, "amperes");
        problems.Range($"{path}.spaces", panel.Spaces, 1, JobLimits.Spaces, "spaces");
        problems.Range($"{path}.tandem_spaces", panel.TandemSpaces, 0, panel.Spaces, "spaces");
        problems.Range($"{path}.measured_demand_va", panel.MeasuredDemandVa?.ToVoltAmperes(), 0, JobLimits.VoltAmperes, "volt-amperes");
        problems.Range($"{path}.circuits", panel.Circuits.Length, 0, JobLimits.Many, "circuits");
        foreach (var (circuit, c) in panel.Circuits.Select((x, i) => (x, i)))
        {
            Amperes($"{path}.circuits[{c}].breaker_a", circuit.BreakerA, problems);
            problems.Range($"{path}.circuits[{c}].poles", circuit.Poles, 1, 2, "poles");
            problems.Range($"{path}.circuits[{c}].space", circuit.Space, 1, panel.Spaces, "as the spaces of the panel are numbered");
            problems.Range($"{path}.circuits[{c}].load_va", circuit.LoadVa?.ToVoltAmperes(), 0, JobLimits.VoltAmperes, "volt-amperes");
        }
    }

    private static void Service(ServiceWork service, ProblemList problems)
    {
        problems.Range("$.service.rating_a", service.RatingA?.ToAmperes(), LeastServiceAmperes, JobLimits.PanelAmperes, "amperes");
        problems.Length("$.service.trench", service.Trench, Length.Zero, Length.FromFeet(JobLimits.Feet));
        problems.Length("$.service.conductor_length", service.ConductorLength, Length.Zero, Length.FromFeet(MostServiceFeet));
        problems.Length("$.service.disconnect_to_panel", service.DisconnectToPanel, Length.Zero, Length.FromFeet(MostServiceFeet));
        problems.Range("$.service.ground_rods", service.GroundRods, 0, MostGroundRods, "ground rods");
        problems.Range("$.service.utility_wait_days", service.UtilityWaitDays, 0, JobLimits.Many, "days");
    }

    private static void Equipment(Equipment equipment, string path, ProblemList problems)
    {
        if (equipment.Volts is not (null or 120 or 240))
        {
            problems.Add($"{path}.volts", $"{equipment.Volts}", "120 or 240");
        }

        problems.Range($"{path}.load_va", equipment.LoadVa?.ToVoltAmperes(), 0, JobLimits.VoltAmperes, "volt-amperes");
        Amperes($"{path}.minimum_circuit_ampacity_a", equipment.MinimumCircuitAmpacityA, problems);
        problems.Range(
            $"{path}.maximum_overcurrent_device_a", equipment.MaximumOvercurrentDeviceA?.ToAmperes(), StandardBreakers.Smallest, JobLimits.PanelAmperes, "amperes");
        if (equipment.MaximumOvercurrentDeviceA < equipment.MinimumCircuitAmpacityA)
        {
            problems.Add(
                $"{path}.maximum_overcurrent_device_a", $"{equipment.MaximumOvercurrentDeviceA}",
                $"at least minimum_circuit_ampacity_a, {equipment.MinimumCircuitAmpacityA}, as every nameplate has it");
        }
    }

    private static void Amperes(string path, Current? found, ProblemList problems) =>
        problems.Range(path, found?.ToAmperes(), LeastAmperes, JobLimits.PanelAmperes, "amperes");
}
