using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Framing;

namespace Estimator.Engine.Wiring.Boxes;

/// <summary>A box before it is filled: what stands in it and where.</summary>
/// <param name="Index">Its place among the boxes of the house.</param>
/// <param name="Id">Stable id, that of its first device or its equipment.</param>
/// <param name="Place">Where.</param>
/// <param name="Devices">Indexes of its devices.</param>
/// <param name="Equipment">Index of its equipment; -1 for devices.</param>
/// <param name="Use">What is asked of the box.</param>
/// <param name="OldWork">Whether it is cut into a finished wall.</param>
/// <param name="Gangs">Gangs.</param>
/// <param name="Metal">Whether its wiring method asks for a metal box.</param>
internal sealed record DraftBox(
    int Index, string Id, Placement Place, ImmutableArray<int> Devices, int Equipment, BoxUse Use, bool OldWork, int Gangs, bool Metal);
