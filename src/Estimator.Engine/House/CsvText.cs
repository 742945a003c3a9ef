namespace Estimator.Engine.House;

/// <summary>A whole CSV file kept with a job, longer than any other text of a job may be. The default is an empty file.</summary>
/// <param name="Text">The file's text.</param>
public readonly record struct CsvText(string Text)
{
    /// <summary>The file's text.</summary>
    public override string ToString() => Text ?? "";
}
