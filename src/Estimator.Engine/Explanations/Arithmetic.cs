using Estimator.Engine.Draws;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Explanations;

/// <summary>Applies an <see cref="Operation"/> to the values of its inputs.</summary>
internal static class Arithmetic
{
    private static readonly long Sixteenth = Length.FromSixteenths(1).ToNanometres();
    private static readonly long Foot = Length.FromFeet(1).ToNanometres();

    internal static decimal Apply(Operation operation, ReadOnlySpan<Fact> inputs)
    {
        var needed = operation switch
        {
            Operation.Sum or Operation.Count => 0,
            Operation.Difference or Operation.Product or Operation.Minimum or Operation.Maximum or Operation.Because or Operation.InFeet => 1,
            Operation.SquareDistance or Operation.StraightDistance or Operation.PartWay or Operation.TrianglePercentile => 4,
            Operation.Quotient or Operation.PercentOf or Operation.RoundUp or Operation.RoundDown or Operation.RoundNearest or Operation.Apart or Operation.DrawnPercentile or Operation.DrawnShare => 2,
            _ => throw new ArgumentException($"{operation} is a leaf and computes nothing.", nameof(operation)),
        };
        if (inputs.Length < needed)
        {
            throw new ArgumentException($"{operation} takes at least {needed} inputs, {inputs.Length} were given.", nameof(inputs));
        }

        return operation switch
        {
            Operation.Sum => Fold(inputs, 0m, static (a, b) => a + b),
            Operation.Count => inputs.Length,
            Operation.Difference => Fold(inputs[1..], inputs[0].Value, static (a, b) => a - b),
            Operation.Product => Fold(inputs, 1m, static (a, b) => a * b),
            Operation.Minimum => Fold(inputs, inputs[0].Value, Math.Min),
            Operation.Maximum => Fold(inputs, inputs[0].Value, Math.Max),
            Operation.Because => inputs[0].Value,
            Operation.InFeet => inputs[0].Value / Foot,
            Operation.Quotient => inputs[0].Value / inputs[1].Value,
            Operation.PercentOf => inputs[0].Value * inputs[1].Value / 100m,
            Operation.RoundUp => decimal.Ceiling(inputs[0].Value / inputs[1].Value) * inputs[1].Value,
            Operation.RoundDown => decimal.Floor(inputs[0].Value / inputs[1].Value) * inputs[1].Value,
            Operation.RoundNearest => Nearest(inputs[0].Value, inputs[1].Value),
            Operation.Apart => Math.Abs(inputs[0].Value - inputs[1].Value),
            Operation.SquareDistance => Math.Abs(inputs[0].Value - inputs[2].Value) + Math.Abs(inputs[1].Value - inputs[3].Value),
            Operation.StraightDistance => Straight(inputs[0].Value - inputs[2].Value, inputs[1].Value - inputs[3].Value),
            Operation.PartWay => inputs[0].Value + PartWay(inputs[1].Value - inputs[0].Value, inputs[2].Value, inputs[3].Value),
            Operation.TrianglePercentile => Triangle.FromPercent(inputs[1].Value, inputs[2].Value, inputs[3].Value).Quantile(decimal.ToInt32(inputs[0].Value), 100) * 100m / Triangle.One,
            Operation.DrawnPercentile => Drawn(inputs).Percentile(inputs[0].Value),
            Operation.DrawnShare => Drawn(inputs).ShareTo(inputs[0].Value),
            _ => throw new ArgumentException($"{operation} is not known.", nameof(operation)),
        };
    }

    private static decimal Fold(ReadOnlySpan<Fact> inputs, decimal start, Func<decimal, decimal, decimal> combine)
    {
        foreach (var input in inputs)
        {
            start = combine(start, input.Value);
        }

        return start;
    }

    private static DrawnCost Drawn(ReadOnlySpan<Fact> inputs)
    {
        const int Head = 2, OfAFactor = 5;
        var factors = new List<DrawnFactor>((inputs.Length - Head) / OfAFactor);
        for (var i = Head; i + OfAFactor <= inputs.Length; i += OfAFactor)
        {
            factors.Add(new DrawnFactor(decimal.ToInt32(inputs[i].Value), inputs[i + 1].Value, Triangle.FromPercent(inputs[i + 2].Value, inputs[i + 3].Value, inputs[i + 4].Value)));
        }

        return DrawnCost.Of(factors, decimal.ToInt32(inputs[1].Value));
    }

    private static decimal Nearest(decimal value, decimal step) => decimal.Round(value / step, 0, MidpointRounding.AwayFromZero) * step;

    private static decimal PartWay(decimal span, decimal offset, decimal whole) => whole == 0 ? 0 : Nearest(span * offset / whole, Sixteenth);

    private static decimal Straight(decimal dx, decimal dy) =>
        Roots.StraightSixteenths(decimal.ToInt64(Nearest(dx, Sixteenth) / Sixteenth), decimal.ToInt64(Nearest(dy, Sixteenth) / Sixteenth)) * (decimal)Sixteenth;
}
