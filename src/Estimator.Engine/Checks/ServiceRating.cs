using Estimator.Engine.Findings;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>The service carries the load.</summary>
/// <remarks>The lowest of the methods that apply to the dwelling is taken. Source: NEC 220.82, 220.83, 220.87, part III; 230.79(C).</remarks>
internal static class ServiceRating
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        if (context.Job.Panels.FirstOrDefault(p => p.FedFrom is null) is not { } service)
        {
            yield break;
        }

        var rating = service.RatingA.ToAmperes();
        var sheet = context.Loads.Sheets.MinBy(s => s.Amperes.Value)!;
        if (sheet.Amperes.Value > rating)
        {
            yield return context.Asked(
                "service-load", sheet.Article, $"The dwelling's load is {sheet.Amperes.Value:0} A by the {sheet.Method} method and the service is {rating:0} A. A larger service, or load management, is needed; work on a service is for licensed people and the utility.",
                [service.Id]) with
            { Figures = [sheet.Amperes.Node] };
        }

        if (rating < LoadRules.ServiceLeast.Number() && service.FedFrom is null)
        {
            yield return context.Asked(
                "service-least", "230.79(C)", $"The service is {rating:0} A; {LoadRules.ServiceLeast.Number():0} A is the least for a one-family dwelling.", [service.Id],
                service.Existing ? Severity.Advice : Severity.Mandatory);
        }
    }
}
