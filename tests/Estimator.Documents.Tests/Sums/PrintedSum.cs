namespace Estimator.Documents.Tests.Sums;

/// <summary>A total as it is printed under a column of a table, with what the printed lines above it come to.</summary>
/// <param name="Table">The heads of the table, in one line.</param>
/// <param name="Total">The line of the total.</param>
/// <param name="Printed">The figure that is printed as total.</param>
/// <param name="Lines">Sum of the figures that are printed above it.</param>
internal sealed record PrintedSum(string Table, string Total, decimal Printed, decimal Lines);
