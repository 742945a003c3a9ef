using Estimator.Engine.Findings;
using Estimator.Engine.Loads;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>The service carries the load.</summary>
/// <remarks>
/// A measured demand decides where there is one, else the lowest of the methods that apply. An existing service is not judged where the rest of its
/// dwelling is not known. Source: NEC 220.82, 220.83, 220.87, part III; 230.79(C).
/// </remarks>
internal static class ServiceRating
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        if (context.Job.Panels.FirstOrDefault(p => p.FedFrom is null) is not { } service)
        {
            yield break;
        }

        var rating = service.RatingA.ToAmperes();
        if (context.Rule("service-load") is { } load)
        {
            if (Decisive(context) is not { } sheet)
            {
                yield return context.Asked(
                    load with { Code = "service-load-unknown" }, $"The service panel {service.Id} is there already, and the load of the rest of the dwelling is not stated, so whether it carries the new load can't be judged. State measured_demand_va, the year's highest demand, or other_area_sq_ft and the load_va of each two-pole circuit.",
                    [service.Id], Severity.Unjudged, LoadRules.Article(context.Year, ".83"));
            }
            else
            {
                context.Applies(load);
                if (sheet.Amperes.Value > rating)
                {
                    yield return context.Asked(
                        load, $"The dwelling's load is {sheet.Amperes.Value:0} A by the {sheet.Method} method and the service is {rating:0} A. A larger service, or load management, is needed; work on a service is for licensed people and the utility.",
                        [service.Id], article: sheet.Article) with
                    { Figures = [sheet.Amperes.Node] };
                }
            }
        }

        if (context.Rule("service-least") is { } least)
        {
            var limit = context.Limit(least.Code, LoadRules.ServiceLeast);
            foreach (var finding in context.Ask(
                least, rating >= limit, () => $"The service is {rating:0} A; {limit:0} A is the least for a one-family dwelling.", [service.Id], service.Existing ? Severity.Advice : Severity.Mandatory))
            {
                yield return finding;
            }
        }
    }

    // What was measured outranks what is calculated.
    private static LoadWorksheet? Decisive(CheckContext context) =>
        context.Loads.Sheets.FirstOrDefault(s => s.Method == "measured") ?? context.Loads.Sheets.MinBy(s => s.Amperes.Value);
}
