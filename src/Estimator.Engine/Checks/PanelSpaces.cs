using Estimator.Engine.Findings;
using Estimator.Engine.House;

namespace Estimator.Engine.Checks;

/// <summary>The circuits fit the panel, its tandem spaces counted, and its make is known.</summary>
/// <remarks>Source: NEC 110.3(B), 408.54 in older numbering.</remarks>
internal static class PanelSpaces
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        for (var p = 0; p < context.Layout.Panels.Length; p++)
        {
            var panel = context.Layout.Panels[p].Source;
            // The two-pole breaker of a new panel that this one feeds stands here too.
            var feeders = context.Job.Panels.Count(x => x.FedFrom == panel.Id && !x.Existing);
            var halves = Halves(panel, context.Wiring.Circuits.Where(c => c.Panel == p).Sum(c => c.Poles) + 2 * feeders);
            // A tandem puts two one-pole circuits into one space, in the spaces that take one.
            var most = 2 * (panel.Spaces + panel.TandemSpaces);
            var plain = 2 * panel.Spaces;
            if (halves > most)
            {
                yield return context.Asked(
                    "panel-spaces", "110.3(B)", $"Panel {panel.Called()} needs {(halves + 1) / 2} spaces and has {panel.Spaces}, {panel.TandemSpaces} of which take a tandem. Add a subpanel, or a larger panel.", [panel.Id]);
            }
            else if (halves > plain)
            {
                yield return context.Asked(
                    "panel-tandems", "110.3(B)", $"Panel {panel.Called()} fits its circuits only with tandem breakers in {(halves - plain + 1) / 2} of the {panel.TandemSpaces} spaces that take one.", [panel.Id], Severity.Advice);
            }

            if (panel.Existing && (panel.Make is null || panel.Series is null))
            {
                yield return new Finding
                {
                    Code = "panel-make",
                    Severity = Severity.Advice,
                    Where = [panel.Id],
                    Text = FormattableString.Invariant($"The make or series of panel {panel.Called()} is not stated; breakers must be those listed for it. Read its label."),
                    Article = "110.3(B)",
                    Edition = $"NEC {(int)context.Edition}",
                };
            }

            if (panel.FedFrom is { } from)
            {
                yield return new Finding
                {
                    Code = "feeder-not-counted",
                    Severity = Severity.Unjudged,
                    Where = [panel.Id],
                    Text = FormattableString.Invariant($"The feeder from {from} to panel {panel.Called()} is neither sized nor counted here: price it apart."),
                };
            }
        }
    }

    private static int Halves(Panel panel, int newPoles) =>
        2 * newPoles + panel.Circuits.Sum(c => c.Tandem ? c.Poles : 2 * c.Poles);
}
