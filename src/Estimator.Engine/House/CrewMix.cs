using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>Who is on the job, and for how long a week. What is left out is an electrician with the helpers that the bid settings give.</summary>
public sealed record CrewMix
{
    /// <summary>Electricians who lead the work.</summary>
    public int? Leads { get; init; }

    /// <summary>Further electricians; null is one, none beside a lead.</summary>
    public int? Electricians { get; init; }

    /// <summary>Apprentices and helpers; null is as many to each electrician as the bid settings say, which a number here replaces.</summary>
    public int? Helpers { get; init; }

    /// <summary>Wage of a lead, in dollars an hour; null raises the electrician's by a row of the bid table.</summary>
    public Money? LeadWage { get; init; }

    /// <summary>Apprentices and helpers that the state or city allows to each electrician; null leaves it unjudged, it differs by state.</summary>
    public decimal? HelpersLimit { get; init; }

    /// <summary>Paid hours of a week beyond those without overtime; null is none.</summary>
    public decimal? OvertimeHoursAWeek { get; init; }

    /// <summary>Weeks in a row with overtime; null is one.</summary>
    public int? OvertimeWeeks { get; init; }
}
