namespace Estimator.Web.Figures;

/// <summary>How closely a figure is shown.</summary>
public enum FigureForm
{
    /// <summary>As people read this unit in a table.</summary>
    Table = 1,

    /// <summary>Whole units: $7,512, 966.</summary>
    Whole,

    /// <summary>To the cent, or to the hundredth.</summary>
    Exact,

    /// <summary>As far as it was worked out, for arithmetic.</summary>
    Full,
}
