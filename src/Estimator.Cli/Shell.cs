namespace Estimator.Cli;

/// <summary>The streams that a verb works with.</summary>
internal sealed record Shell(TextReader Input, TextWriter Output, TextWriter Error);
