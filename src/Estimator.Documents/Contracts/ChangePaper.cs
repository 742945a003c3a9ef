using Estimator.Engine.Contracts;
using Estimator.Engine.Measures;

namespace Estimator.Documents.Contracts;

/// <summary>A change order as the customer reads it.</summary>
/// <param name="Job">Name of the job.</param>
/// <param name="Number">Number of the change order.</param>
/// <param name="Change">What changes.</param>
/// <param name="On">Its day.</param>
/// <param name="Before">What the contract is worth without it.</param>
public sealed record ChangePaper(string Job, int Number, ChangeOrder Change, DateOnly On, Money Before)
{
    /// <summary>What the contract is worth with it.</summary>
    public Money After => Before + Change.Price;
}
