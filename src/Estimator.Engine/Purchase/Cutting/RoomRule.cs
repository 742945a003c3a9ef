namespace Estimator.Engine.Purchase.Cutting;

/// <summary>A condition that every plan meets: the stocks that it buys have room for all pieces when pieces are weighed in some way.</summary>
/// <param name="Room">The most weight that each stock can hold.</param>
/// <param name="Needed">The weight of all pieces.</param>
/// <remarks>Such weights are known as dual feasible functions: weighing by length gives the cover bound, by one the count bound, by the prices of a linear program its bound.</remarks>
internal sealed record RoomRule(long[] Room, long Needed);
