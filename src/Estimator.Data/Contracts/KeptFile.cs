namespace Estimator.Data.Contracts;

/// <summary>A kept document in a list.</summary>
/// <param name="Paper">What it was.</param>
/// <param name="Number">Number of the revision, the change order or the invoice.</param>
/// <param name="File">Name of the file.</param>
/// <param name="Sha256">SHA-256 of its bytes, in hexadecimal.</param>
/// <param name="At">When it was kept, UTC.</param>
public sealed record KeptFile(PaperKind Paper, int Number, string File, string Sha256, DateTimeOffset At);
