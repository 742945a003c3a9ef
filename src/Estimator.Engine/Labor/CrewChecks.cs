using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Labor;

/// <summary>Judges the crew that the user stated.</summary>
public static class CrewChecks
{
    /// <summary>What is wrong with it.</summary>
    /// <remarks>How many apprentices one electrician may look after is set by states and cities and differs; only a stated limit is judged. Source: common practice, no source.</remarks>
    public static IEnumerable<Finding> Of(BidSettings bid)
    {
        if (bid.Crew is not { HelpersLimit: { } limit } crew)
        {
            yield break;
        }

        var electricians = crew is { Leads: null, Electricians: null } ? 1 : (crew.Leads ?? 0) + (crew.Electricians ?? (crew.Leads > 0 ? 0 : 1));
        var helpers = crew.Helpers ?? ((bid.HelpersPerElectrician ?? BidDefaults.HelpersPerElectrician.Number()) * electricians);
        if (helpers > limit * electricians)
        {
            yield return new Finding
            {
                Code = "apprentice-ratio",
                Severity = Severity.Mandatory,
                Text = FormattableString.Invariant($"The crew has {helpers:0.##} apprentices and helpers to {electricians} electricians; the limit that you stated allows {limit * electricians:0.##}. Add an electrician or take a helper off."),
            };
        }
    }
}
