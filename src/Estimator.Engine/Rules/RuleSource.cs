namespace Estimator.Engine.Rules;

/// <summary>Where a rule was read.</summary>
/// <param name="Title">Publication.</param>
/// <param name="Edition">Edition or date.</param>
/// <param name="Section">Section or table.</param>
/// <param name="Page">Page, or how it was seen.</param>
public sealed record RuleSource(string Title, string Edition = "", string Section = "", string Page = "");
