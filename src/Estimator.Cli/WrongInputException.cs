using System.Diagnostics.CodeAnalysis;

namespace Estimator.Cli;

/// <summary>The input is wrong; the message says where, what was found and what is accepted.</summary>
[SuppressMessage("Design", "CA1032", Justification = "It is only ever made with its message.")]
public sealed class WrongInputException(string message) : Exception(message);
