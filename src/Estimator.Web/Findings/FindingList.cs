using Estimator.Engine.Findings;

namespace Estimator.Web.Findings;

/// <summary>Which findings are numbered on drawings and lists: those that ask for something.</summary>
public static class FindingList
{
    /// <summary>What must be mended, then what is worth a look, in the engine's order.</summary>
    public static IEnumerable<Finding> Shown(IEnumerable<Finding> findings) => findings.Where(f => f.Severity is Severity.Mandatory or Severity.Advice);
}
