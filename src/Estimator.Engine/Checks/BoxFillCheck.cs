using Estimator.Engine.Findings;

namespace Estimator.Engine.Checks;

/// <summary>Boxes hold what is in them.</summary>
/// <remarks>Source: NEC 314.16.</remarks>
internal static class BoxFillCheck
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        if (context.Rule("box-fill") is not { } rule || context.Boxes.IsEmpty)
        {
            yield break;
        }

        context.Applies(rule);
        foreach (var box in context.Boxes.Where(b => !b.Fits))
        {
            var largest = box.Item is { } item ? FormattableString.Invariant($"the largest that the catalogue has holds {item.Volume.ToCubicInches():0.##} cu in") : "the catalogue has none for this place";
            yield return context.Asked(
                rule, $"The box of {context.Called(box)} needs {box.RequiredVolume.Value:0.###} cu in with {box.CableEntries} cables; {largest}. Take a cable elsewhere or add a deeper box to the catalogue.",
                [box.Id]) with
            { Figures = [box.RequiredVolume.Node] };
        }
    }
}
