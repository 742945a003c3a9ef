using Estimator.Data.Databases;

namespace Estimator.Data.Contracts;

/// <summary>A document as it was given to the customer, byte for byte. Never changed.</summary>
internal sealed class KeptDocumentRow : OwnedRow
{
    public required string JobId { get; set; }

    public required string Paper { get; set; }

    /// <summary>Number of the revision, the change order or the invoice.</summary>
    public int Number { get; set; }

    public required string File { get; set; }

    public required string MediaType { get; set; }

    public required byte[] Bytes { get; set; }

    /// <summary>SHA-256 of the bytes, in hexadecimal.</summary>
    public required string Sha256 { get; set; }

    public long AtUtcTicks { get; set; }
}
