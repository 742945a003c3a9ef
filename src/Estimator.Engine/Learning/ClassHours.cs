namespace Estimator.Engine.Learning;

/// <summary>Estimated hours of a class of items in a phase.</summary>
/// <param name="Class">The class, as the rule table writes it: cable, device, luminaire.</param>
/// <param name="Hours">Its hours, by the tables as they are shipped.</param>
public sealed record ClassHours(string Class, decimal Hours);
