using Estimator.Engine.Explanations;
using Estimator.Engine.House;

namespace Estimator.Web.Explanations;

/// <summary>What the figures of a page are explained from; a page cascades it to the numbers on it.</summary>
/// <param name="Book">The pages of the explanation.</param>
/// <param name="Job">The job, whose names stand for its file's paths; null on a page of several jobs.</param>
public sealed record FigureSource(ExplanationBook Book, Job? Job)
{
    /// <summary>On a page of several jobs: the job that a page of the book belongs to; null where it belongs to none.</summary>
    public Func<int, Job?>? JobOfPage { get; init; }

    /// <summary>The job that stated a figure.</summary>
    public Job? JobOf(NodeRef node) => Job ?? JobOfPage?.Invoke(node.Page);

    /// <summary>This source with a further page, such as one of figures that only one page of the program shows.</summary>
    public FigureSource With(ExplanationPage page) => this with { Book = new ExplanationBook(Book.Pages.Append(page)) };
}
