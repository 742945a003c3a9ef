namespace Estimator.Web.Plans;

/// <summary>The number of a circuit beside its home run.</summary>
/// <param name="Circuit">Index of the circuit.</param>
/// <param name="Text">What the tag says.</param>
/// <param name="At">Its middle.</param>
/// <param name="Width">Its width, in feet.</param>
/// <param name="Height">Its height, in feet.</param>
public sealed record CircuitTag(int Circuit, string Text, SheetPoint At, double Width, double Height)
{
    /// <summary>Whether two tags cover one another.</summary>
    public bool Covers(CircuitTag other) => Math.Abs(At.X - other.At.X) < (Width + other.Width) / 2 && Math.Abs(At.Y - other.At.Y) < (Height + other.Height) / 2;
}
