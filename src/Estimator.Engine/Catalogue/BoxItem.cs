using Estimator.Engine.Measures;

namespace Estimator.Engine.Catalogue;

/// <summary>A box that can be bought.</summary>
/// <param name="ItemId">Catalogue id.</param>
/// <param name="Use">What it is for.</param>
/// <param name="OldWork">Whether it is cut into a finished wall.</param>
/// <param name="Gangs">Gangs; 1 for ceiling boxes.</param>
/// <param name="Volume">Marked volume.</param>
/// <param name="InternalClamps">Whether its clamps take room inside.</param>
/// <param name="Material">What it is made of.</param>
public sealed record BoxItem(string ItemId, BoxUse Use, bool OldWork, int Gangs, Volume Volume, bool InternalClamps, BoxMaterial Material = BoxMaterial.Any);
