namespace Estimator.Web.Circuits;

/// <summary>What stands in a place of a panel: a breaker or a free space.</summary>
/// <param name="Row">Row from the top, 0 for the first.</param>
/// <param name="Left">Whether in the left column.</param>
/// <param name="Rows">Rows that it takes: one a pole.</param>
/// <param name="Name">What the directory says.</param>
/// <param name="Amperes">Rating; 0 for a free space.</param>
/// <param name="Circuit">Number of a new circuit; 0 for what is there already and for a free space.</param>
public sealed record PanelSpace(int Row, bool Left, int Rows, string Name, decimal Amperes, int Circuit)
{
    /// <summary>Number of the space, as panels count: odd on the left, even on the right.</summary>
    public int Number => 2 * Row + (Left ? 1 : 2);

    /// <summary>Whether its breaker feeds another panel.</summary>
    public bool Feeds { get; init; }

    /// <summary>Whether two circuits share it as a tandem.</summary>
    public bool Shared { get; init; }

    /// <summary>Whether nothing stands there.</summary>
    public bool Free => Amperes == 0;
}
