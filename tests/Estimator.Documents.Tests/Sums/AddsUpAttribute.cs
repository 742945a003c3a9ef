namespace Estimator.Documents.Tests.Sums;

/// <summary>Says of a test that it proves, over random jobs, that the printed lines of a document add up to its printed totals.</summary>
/// <param name="document">The document, by the name of what writes it, or <c>JobTable.</c> and the table's word.</param>
[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
public sealed class AddsUpAttribute(string document) : Attribute
{
    /// <summary>The document.</summary>
    public string Document => document;
}
