using System.Diagnostics.CodeAnalysis;

namespace Estimator.Data.Contracts;

/// <summary>A document as it is given to the customer.</summary>
/// <param name="File">Name of the file.</param>
/// <param name="MediaType">Its media type.</param>
/// <param name="Bytes">Its bytes.</param>
[SuppressMessage("Performance", "CA1819", Justification = "A file is bytes, and goes on as such.")]
public sealed record KeptDocument(string File, string MediaType, byte[] Bytes);
