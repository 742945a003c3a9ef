using Estimator.Engine.Findings;
using Estimator.Engine.House;

namespace Estimator.Engine.Checks;

/// <summary>The circuits fit the panel, its tandem spaces counted, and its make is known.</summary>
/// <remarks>Source: NEC 110.3(B), 408.54 in older numbering.</remarks>
internal static class PanelSpaces
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        if (context.Rule("panel-spaces") is not { } spaces || context.Rule("panel-tandems") is not { } tandems)
        {
            yield break;
        }

        for (var p = 0; p < context.Layout.Panels.Length; p++)
        {
            var panel = context.Layout.Panels[p].Source;
            // The two-pole breaker of a new panel that this one feeds stands here too.
            var feeders = context.Job.Panels.Count(x => x.FedFrom == panel.Id && !x.Existing);
            var halves = Halves(context.Job, panel, context.Wiring.Circuits.Where(c => c.Panel == p).Sum(c => c.Poles) + 2 * feeders);
            // A tandem puts two one-pole circuits into one space, in the spaces that take one.
            var most = 2 * (panel.Spaces + panel.TandemSpaces);
            var plain = 2 * panel.Spaces;
            context.Applies(spaces);
            if (halves <= most && panel.TandemSpaces > 0)
            {
                context.Applies(tandems);
            }

            if (halves > most)
            {
                yield return context.Asked(
                    spaces, $"Panel {panel.Called()} needs {(halves + 1) / 2} spaces and has {panel.Spaces}, {panel.TandemSpaces} of which take a tandem. Add a subpanel, or a larger panel.", [panel.Id]);
            }
            else if (halves > plain)
            {
                yield return context.Asked(
                    tandems, $"Panel {panel.Called()} fits its circuits only with tandem breakers in {(halves - plain + 1) / 2} of the {panel.TandemSpaces} spaces that take one.", [panel.Id], Severity.Advice);
            }

            if (panel.Existing && context.Rule("panel-make") is { } make)
            {
                foreach (var finding in context.Ask(
                    make, panel.Make is not null && panel.Series is not null,
                    () => $"The make or series of panel {panel.Called()} is not stated; breakers must be those listed for it. Read its label.", [panel.Id], Severity.Advice))
                {
                    yield return finding;
                }
            }
        }
    }

    private static int Halves(Job job, Panel panel, int newPoles) => 2 * newPoles + PanelCircuits.Halves(job, panel);
}
