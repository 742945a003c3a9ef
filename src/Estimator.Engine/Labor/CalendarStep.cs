using Estimator.Engine.Explanations;

namespace Estimator.Engine.Labor;

/// <summary>A stretch of the calendar.</summary>
/// <param name="Kind">What happens.</param>
/// <param name="Label">What it is, such as "Rough inspection".</param>
/// <param name="Days">Whole days: working days, or days on the calendar of waiting for the utility.</param>
/// <param name="From">Its first day; null without a start.</param>
/// <param name="To">Its last day; null without a start, and where it takes no day.</param>
public sealed record CalendarStep(CalendarStepKind Kind, string Label, Fact Days, DateOnly? From, DateOnly? To);
