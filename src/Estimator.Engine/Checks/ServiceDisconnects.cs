using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>A service that is new or takes an old one's place can be cut off from outside, and has surge protection.</summary>
/// <remarks>
/// A service panel in a room outdoors is its own disconnect. Where a new panel hangs indoors and nothing is said of the service, that is asked for. Source: NEC
/// 230.67, 230.85, in 2026 230.70(A)(1).
/// </remarks>
internal static class ServiceDisconnects
{
    internal static IEnumerable<Finding> Judge(CheckContext context) =>
        context.Layout.Panels.FirstOrDefault(p => p.Source.FedFrom is null) is { } service && (context.Job.Service is not null || !service.Source.Existing)
            ? Emergency(context, service).Concat(Outdoors(context, service)).Concat(Surge(context, service.Source))
            : [];

    private static IEnumerable<Finding> Emergency(CheckContext context, LaidPanel service) => context.Rule("emergency-disconnect") is not { } rule
        ? []
        : Ask(
            context, rule, service, PlaceOf(context, service) is not ServiceDisconnect.InPanel,
            () => $"Panel {service.Source.Called()} hangs indoors and its main breaker alone cuts the dwelling off; a marked emergency disconnect outdoors is asked for. Work on a service is for licensed people and the utility.",
            () => $"Panel {service.Source.Called()} is new and hangs indoors, and whether the dwelling has a marked emergency disconnect outdoors is not stated: state the work on the service.");

    private static IEnumerable<Finding> Outdoors(CheckContext context, LaidPanel service) => context.Rule("service-outdoors") is not { } rule
        ? []
        : Ask(
            context, rule, service, PlaceOf(context, service) is ServiceDisconnect.ServiceOutdoors,
            () => $"The service disconnect of panel {service.Source.Called()} is not outdoors; an emergency or meter disconnect ahead of it no longer serves. Put the service disconnect outdoors; the panel indoors is then fed by four wires. Work on a service is for licensed people and the utility.",
            () => $"Panel {service.Source.Called()} is new and hangs indoors: on a new service its main breaker may not be the service disconnect, which must stand outdoors. State the work on the service.");

    // Both ways of counting a new service count a surge protector from the edition that first asks for it.
    private static IEnumerable<Finding> Surge(CheckContext context, Panel service) => context.Rule("surge-protection") is not { } rule
        ? []
        : context.Ask(
            rule, context.Year >= TakeoffRules.SurgeFromEdition.Number(),
            () => $"A surge protective device of type 1 or 2 is asked for at panel {service.Called()} and is not counted under this edition. Add one to the price.", [service.Id]);

    private static IEnumerable<Finding> Ask(CheckContext context, CodeRule rule, LaidPanel service, bool held, Func<FormattableString> wrong, Func<FormattableString> open)
    {
        var stated = context.Job.Service is not null || PanelOutdoors(context, service);
        return context.Ask(rule, stated && held, stated ? wrong : open, [service.Source.Id], stated ? Severity.Mandatory : Severity.Unjudged);
    }

    private static ServiceDisconnect PlaceOf(CheckContext context, LaidPanel service) => PanelOutdoors(context, service)
        ? ServiceDisconnect.ServiceOutdoors
        : context.Job.Service?.Disconnect ?? ServicePartRules.DisconnectFor(context.Year);

    private static bool PanelOutdoors(CheckContext context, LaidPanel service) => context.House.Rooms[service.Place.Room].Source.Kind is RoomKind.Outdoors;
}
