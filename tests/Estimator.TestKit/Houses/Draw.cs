using CsCheck;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.TestKit.Houses;

/// <summary>Draws numbers for a random house from one stream, so that a number gives the same house again.</summary>
internal sealed class Draw(PCG pcg)
{
    /// <summary>A whole number from low to high, both included.</summary>
    internal int Int(int low, int high) => high <= low ? low : low + (int)pcg.Next((uint)(high - low + 1));

    internal bool Chance(int percent) => Int(1, 100) <= percent;

    internal T Pick<T>(params ReadOnlySpan<T> choices) => choices[Int(0, choices.Length - 1)];

    internal static Length Inches(int inches) => Length.FromInches(inches);

    internal static GridPoint Point(int x, int y) => new(Inches(x), Inches(y));
}
