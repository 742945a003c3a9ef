using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Takeoff;

/// <summary>Counts what work on a service takes: meter, entrance, conductors, disconnect, electrodes, bonding, surge protection.</summary>
/// <remarks>Source: NEC 230.67, 230.70, 230.85, 250.53, 250.66, 250.94, 250.104, table 310.12; parts and lengths common practice, no source.</remarks>
internal sealed class ServiceParts(Job job, ServiceWork work, LineCollecting lines, PageWriter page)
{
    private const string Where = "service";

    private readonly List<Finding> _findings = [];
    private Fact _sized;

    private int Year => (int)job.Code.Edition;

    private ServiceDisconnect Place => work.Disconnect ?? ServicePartRules.DisconnectFor(Year);

    /// <summary>The rating of a service: its own, else that of the service panel.</summary>
    internal static decimal RatingOf(Job job, ServiceWork work) => (work.RatingA ?? job.Panels.FirstOrDefault(p => p.FedFrom is null)?.RatingA ?? Current.Zero).ToAmperes();

    internal ImmutableArray<Finding> Add()
    {
        var rating = RatingOf(job, work);
        if (ServiceConductors.ForRating(rating) is not { } row || ServicePartRules.MeterBase(rating) is not { } meter || ServicePartRules.Disconnect(rating) is not { } disconnect)
        {
            return [Say("service-too-large", $"The tables of services end below {rating:0} A: such a service is for an engineer and the utility. Nothing of it is counted here.", "310.12")];
        }

        _sized = row.Read(page, Unit.Amperes, "rating_a");
        var size = WireSize.Parse(row.Text(work.Metal is ConductorMetal.Copper ? "copper" : "aluminium")).Value;
        One($"meter-base-{meter}", "Meter base");
        Entrance(size);
        Disconnect(size, disconnect);
        Electrodes(size);
        if (Year >= TakeoffRules.SurgeFromEdition.Number())
        {
            One("surge-protector", "Surge protection of the service, 230.67");
        }

        One("bonding-terminal", "Terminal for bonding other systems, 250.94");
        One("utility-coordination", "Application, appointment and release with the utility");
        Extra();
        _findings.Add(Say(
            "service-live", $"The service conductors, the meter and the line side of the main stay live with the main off: only the utility makes them dead. This work is for licensed people, under a permit; it is connected again after the inspector's release.", "230.70"));
        return [.. _findings];
    }

    private void Entrance(WireSize size)
    {
        var overhead = work.Entrance is ServiceEntrance.Overhead;
        var row = overhead ? ServicePartRules.OverheadFeet : ServicePartRules.UndergroundFeet;
        One(overhead ? "service-mast" : "service-riser", overhead ? "Mast with weatherhead" : "Riser to the meter");
        if (!overhead && work.Trench is { } trench)
        {
            lines.Add("trench", page.Given("$.service.trench", "Trench of the service", trench), Where);
        }

        Run(Item("service-conductors", size), work.ConductorLength is { } own ? page.Given("$.service.conductor_length", row.Label, own) : row.ReadFeet(page));
    }

    private void Disconnect(WireSize size, int disconnect)
    {
        if (Place is ServiceDisconnect.InPanel)
        {
            return;
        }

        var service = Place is ServiceDisconnect.ServiceOutdoors;
        One($"{(service ? "service-disconnect" : "emergency-disconnect")}-{disconnect}", service ? "Service disconnect outdoors" : "Emergency disconnect outdoors, 230.85");
        One("disconnect-label", "Label of the disconnect");
        var length = work.DisconnectToPanel is { } own ? page.Given("$.service.disconnect_to_panel", "Conductors to the panel", own) : ServicePartRules.DisconnectToPanelFeet.ReadFeet(page);
        Run(Item(service ? "panel-feed" : "service-conductors", size), length);
        if (service)
        {
            One("ground-bar", "Bar that keeps grounds and neutrals apart");
            _findings.Add(Say(
                "service-four-wire", $"The service disconnect stands outdoors, so the panel behind it is fed by four wires: its neutrals stay apart from its grounds, and old three-wire range and dryer circuits lose their exception and get a fourth wire.", "250.140, 250.142"));
        }
    }

    private void Electrodes(WireSize size)
    {
        var rods = work.GroundRods is { } own ? page.Given("$.service.ground_rods", "Ground rods", own, Unit.Each)
            : work.ConcreteEncased ? page.Constant("No rods beside a concrete-encased electrode", 0, Unit.Each) : TakeoffRules.GroundRods.Read(page, Unit.Each);
        if (rods.Value > 0)
        {
            lines.Add("ground-rod", rods, Where);
            Run(Conductor(ElectrodeConductors.ToRods(size, work.Metal)), TakeoffRules.ElectrodeConductor.ReadFeet(page));
        }

        if (work.ConcreteEncased)
        {
            One("electrode-clamp", "Clamp at the concrete-encased electrode");
            Run(Conductor(ElectrodeConductors.ToConcrete(size, work.Metal)), ServicePartRules.EncasedFeet.ReadFeet(page));
        }

        if (work.WaterPipe)
        {
            One("water-pipe-clamp", "Clamp at the metal water pipe");
            Run(Conductor(ElectrodeConductors.For(size, work.Metal)), ServicePartRules.WaterPipeFeet.ReadFeet(page));
        }

        if (rods.Value == 0 && !work.ConcreteEncased && !work.WaterPipe)
        {
            _findings.Add(Say("service-electrode", $"No grounding electrode is stated: use the concrete-encased one, or two rods, and bond a metal water pipe.", "250.50"));
        }
    }

    private void Extra()
    {
        if (work.Replaces)
        {
            One("service-removal", "Old service taken down");
        }

        if (work.TemporaryPower)
        {
            One("temporary-power", "Temporary power");
        }
    }

    // A length of a conductor, which has its size by the rating of the service.
    private void Run(string item, Fact length) =>
        lines.Add(item, page.Compute(Operation.Because, "service-conductor", "Length of a conductor that is sized by the service", Unit.Length, length, _sized), Where);

    private void One(string item, string label) => lines.AddOne(item, label, Where);

    private string Item(string kind, WireSize size) => $"{kind}-{(work.Metal is ConductorMetal.Copper ? "cu" : "al")}-{size.ToString().Replace('/', '_')}";

    private static string Conductor(WireSize size) => $"electrode-conductor-{size.ToString().Replace('/', '_')}";

    private Finding Say(string code, FormattableString text, string article) => new()
    {
        Code = code,
        Severity = Severity.Advice,
        Where = [Where],
        Text = FormattableString.Invariant(text),
        Article = article,
        Edition = $"NEC {Year}",
        Verified = Year < 2026,
    };
}
