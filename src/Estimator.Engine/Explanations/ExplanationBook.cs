using System.Collections.Immutable;

namespace Estimator.Engine.Explanations;

/// <summary>All pages of one takeoff.</summary>
public sealed class ExplanationBook
{
    private readonly ImmutableSortedDictionary<int, ExplanationPage> _pages;

    /// <summary>A book of finished pages.</summary>
    /// <param name="pages">The pages, each with its own number.</param>
    public ExplanationBook(IEnumerable<ExplanationPage> pages) => _pages = pages.ToImmutableSortedDictionary(p => p.Number, p => p);

    /// <summary>The pages in order.</summary>
    public IEnumerable<ExplanationPage> Pages => _pages.Values;

    /// <summary>The node at a place.</summary>
    /// <exception cref="KeyNotFoundException">No page has that number.</exception>
    public ExplanationNode this[NodeRef node] => _pages[node.Page][node.Index];
}
