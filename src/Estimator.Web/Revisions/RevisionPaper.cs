using System.Globalization;
using Estimator.Data.Companies;
using Estimator.Data.Jobs;
using Estimator.Data.Revisions;
using Estimator.Documents;
using Estimator.Documents.Contracts;
using Estimator.Engine;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Payments;
using Estimator.Engine.Wiring;
using Estimator.Web.Catalogues;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;

namespace Estimator.Web.Revisions;

/// <summary>A saved revision with its estimate made again, thoroughly, from the job and the catalogue that it was saved with.</summary>
/// <param name="Saved">The revision.</param>
/// <param name="Estimate">The estimate.</param>
/// <param name="Catalogue">The catalogue that it was saved with.</param>
public sealed record RevisionPaper(SavedRevision Saved, JobEstimate Estimate, PartsCatalogue Catalogue)
{
    /// <summary>Whether the estimate gives the saved figures; another version of the program may not.</summary>
    public bool Agrees
    {
        get
        {
            var (bid, summary) = (Estimate.Bid, Saved.Summary);
            return bid.Price.Value == summary.Likely.ToDollars() && bid.Low.Value == summary.Low.ToDollars() && bid.High.Value == summary.High.ToDollars();
        }
    }

    /// <summary>What a person is told where it does not agree.</summary>
    public string Disagreement => string.Create(
        CultureInfo.InvariantCulture,
        $"Revision {Saved.Summary.Number} was priced at {American.Dollars(Saved.Summary.Likely.ToDollars())} by another version of this program; this one makes {American.Dollars(Estimate.Bid.Price.Value)} of it. No document is made that contradicts what was saved: go back to the job and save a new revision.");

    /// <summary>Who sends the document, and of which revision it is.</summary>
    public Letterhead Letterhead(CompanySettings company) => new()
    {
        Company = company.Name,
        CompanyLines = [.. company.AddressLines.Append(company.Licence).Where(line => line.Length > 0)],
        IssuedOn = DateOnly.FromDateTime(Saved.Summary.At.ToLocalTime().DateTime),
        Revision = Saved.Summary.Number.ToString(CultureInfo.InvariantCulture),
        PaymentTerms = InvoiceWords.Of(PaymentPlanning.Compute(Estimate, Catalogue)),
    };

    /// <summary>Loads a revision and makes its estimate; null where there is none.</summary>
    public static async Task<RevisionPaper?> LoadAsync(JobStore jobs, EstimateShelf estimates, string jobId, int number, CancellationToken token = default)
    {
        if (await jobs.LoadRevisionAsync(jobId, number, token) is not { } saved)
        {
            return null;
        }

        var read = PartsCatalogue.Read(saved.CatalogueFiles);
        var catalogue = read.Ok ? new PricedCatalogue(read.Value, saved.CatalogueFiles) : throw new InvalidDataException(read.Problem);
        var priced = await estimates.For(saved.Job, saved.Summary.JobVersion, catalogue, SearchDepth.Thorough).WaitAsync(token);
        return new RevisionPaper(saved, priced.Estimate, read.Value);
    }
}
