namespace Estimator.Web.Jobs;

/// <summary>What the last edit did to the price.</summary>
/// <param name="Before">Likely price before it.</param>
/// <param name="After">Likely price after it.</param>
/// <param name="Title">What was done.</param>
public sealed record PriceChange(decimal Before, decimal After, string Title);
