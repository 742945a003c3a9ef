namespace Estimator.Cli.Calc;

/// <summary>A field of a calculator.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Form">number, text, flag, numbers, texts, sizes (wire size to count), or objects.</param>
/// <param name="Words">What it is.</param>
internal sealed record CalcField(string Name, string Form, string Words);
