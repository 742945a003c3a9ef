using System.Collections.Immutable;

namespace Estimator.Documents;

/// <summary>The cautions that stand on every document.</summary>
public static class Cautions
{
    /// <summary>What this is and what it is not.</summary>
    public const string PlanningAid =
        "A planning aid: no substitute for a licensed electrician or the authority having jurisdiction. Local amendments prevail; permits and inspections apply.";

    /// <summary>What protects whoever does the work.</summary>
    public const string AtWork =
        "De-energize and verify before work. Service conductors stay live with the main off: work on a service is for licensed people and the utility.";

    /// <summary>That rules may stand unjudged.</summary>
    public const string Unjudged = "A rule that the program can't judge is listed as unjudged among the findings; who judges it is said there.";

    /// <summary>That hours are a start.</summary>
    public const string Hours = "Hours are starting points; only some units have a published basis, and each line says which.";

    /// <summary>That prices are samples.</summary>
    public const string SamplePrices = "Prices marked as samples are invented: put in your own before you believe a dollar.";

    /// <summary>All that concern safety, in order.</summary>
    public static ImmutableArray<string> Safety { get; } = [PlanningAid, AtWork, Unjudged];
}
