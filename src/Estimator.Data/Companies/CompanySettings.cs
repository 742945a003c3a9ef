using System.Collections.Immutable;
using Estimator.Engine.House;

namespace Estimator.Data.Companies;

/// <summary>What a company prints on its papers, and the rates that its new jobs start with.</summary>
public sealed record CompanySettings
{
    /// <summary>Name; empty until the user states it.</summary>
    public string Name { get; init; } = "";

    /// <summary>Address, line by line.</summary>
    public ImmutableArray<string> AddressLines { get; init; } = [];

    /// <summary>The licence sentence, as the company's state asks for it.</summary>
    public string Licence { get; init; } = "";

    /// <summary>Rates of a new job; what is left out follows the bid table.</summary>
    public BidSettings Rates { get; init; } = new();

    /// <summary>Terms of payment of a new job; what is left out follows the payment table.</summary>
    public PaymentTerms Payment { get; init; } = new();

    /// <summary>Version that these were read at; saving checks it.</summary>
    public int Version { get; init; }
}
