namespace Estimator.Engine.Purchase.Orders;

/// <summary>What became of the packs of a line.</summary>
/// <param name="Line">The line.</param>
/// <param name="Received">Packs that came, substitutes among them.</param>
/// <param name="Cancelled">Packs that are wanted no more.</param>
/// <param name="BackOrdered">Packs that come later; never more than are open.</param>
/// <param name="Returned">Packs that went back.</param>
public sealed record LineStanding(OrderLine Line, int Received, int Cancelled, int BackOrdered, int Returned)
{
    /// <summary>Packs that are still to come.</summary>
    public int Open => Line.Packs - Cancelled - Received;

    /// <summary>Packs that the jobs have or will have of it.</summary>
    public int Covers => Line.Packs - Cancelled - Returned;
}
