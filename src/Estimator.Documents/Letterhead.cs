using System.Collections.Immutable;

namespace Estimator.Documents;

/// <summary>Who sends a document, to whom, and when. What is left out stands as an empty line to be filled in.</summary>
public sealed record Letterhead
{
    /// <summary>Nothing is known: every line is left to be filled in.</summary>
    public static Letterhead Blank { get; } = new();

    /// <summary>Name of the company.</summary>
    public string Company { get; init; } = "";

    /// <summary>Address, telephone and licence of the company, a line each.</summary>
    public ImmutableArray<string> CompanyLines { get; init; } = [];

    /// <summary>Name and address of the customer.</summary>
    public string Customer { get; init; } = "";

    /// <summary>Where the work is done.</summary>
    public string Site { get; init; } = "";

    /// <summary>Day from which the bid stands; null leaves it to be filled in.</summary>
    public DateOnly? IssuedOn { get; init; }

    /// <summary>Which revision of the job it shows.</summary>
    public string Revision { get; init; } = "";

    /// <summary>When and how is paid.</summary>
    public string PaymentTerms { get; init; } = "";
}
