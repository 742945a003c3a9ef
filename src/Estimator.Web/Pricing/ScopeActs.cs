using Estimator.Engine.House;
using Estimator.Engine.Pricing;

namespace Estimator.Web.Pricing;

/// <summary>What is done to the scope and the allowances of a bid, as functions from a job to the next one.</summary>
public static class ScopeActs
{
    /// <summary>The job with a sentence in other words; empty words leave a composed sentence out, and take an own one away.</summary>
    public static Job Say(Job job, ScopeLine line, string text) => line.Composed is null && text.Length == 0
        ? Recompose(job, line.Id)
        : With(job, line.Id, new ScopeEdit { Id = line.Id, Part = line.Part, Text = text });

    /// <summary>The job with a sentence as the program composes it.</summary>
    public static Job Recompose(Job job, string id) => job with { Bid = job.Bid with { Scope = [.. job.Bid.Scope.Where(e => e.Id != id)] } };

    /// <summary>The job with a sentence more.</summary>
    public static Job Add(Job job, string id, ScopePart part, string text) => With(job, id, new ScopeEdit { Id = id, Part = part, Text = text });

    /// <summary>The job with an allowance changed.</summary>
    public static Job Allowance(Job job, string id, Func<Allowance, Allowance> change) =>
        job with { Bid = job.Bid with { Allowances = [.. job.Bid.Allowances.Select(a => a.Id == id ? change(a) : a)] } };

    /// <summary>The job without an allowance.</summary>
    public static Job RemoveAllowance(Job job, string id) => job with { Bid = job.Bid with { Allowances = [.. job.Bid.Allowances.Where(a => a.Id != id)] } };

    private static Job With(Job job, string id, ScopeEdit edit) => job with
    {
        Bid = job.Bid with { Scope = job.Bid.Scope.Any(e => e.Id == id) ? [.. job.Bid.Scope.Select(e => e.Id == id ? edit : e)] : job.Bid.Scope.Add(edit) },
    };
}
