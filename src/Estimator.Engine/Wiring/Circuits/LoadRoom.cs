using Estimator.Engine.Catalogue;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>How many further boxes may hang on the box of a light, fan or alarm, beside the cable that feeds it.</summary>
internal static class LoadRoom
{
    internal static int Of(DraftBox draft) =>
        (int)(draft.Use is BoxUse.OwnHousing ? WiringSettings.OwnHousingEntries : WiringSettings.MostEntries).Number() - 1;
}
