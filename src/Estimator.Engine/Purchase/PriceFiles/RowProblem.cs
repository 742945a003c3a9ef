namespace Estimator.Engine.Purchase.PriceFiles;

/// <summary>What is wrong in a row of a price file. The row is left out; the others may be written.</summary>
/// <param name="Row">The row in the file, from 1.</param>
/// <param name="Field">The heading of the field, or what it says where it has none.</param>
/// <param name="Text">What was found and what is accepted.</param>
public sealed record RowProblem(int Row, string Field, string Text);
