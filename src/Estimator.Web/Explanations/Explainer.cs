namespace Estimator.Web.Explanations;

/// <summary>Which figure's explanation stands open beside the page; one a browser tab.</summary>
public sealed class Explainer
{
    /// <summary>The open figure; null when none is.</summary>
    public OpenedFigure? Opened { get; private set; }

    /// <summary>Raised when another figure is open, or none.</summary>
    public event Action? Changed;

    /// <summary>Whether a number's explanation is open.</summary>
    public bool IsOpen(object owner) => ReferenceEquals(Opened?.Owner, owner);

    /// <summary>Opens a figure's explanation in place of any other.</summary>
    public void Open(OpenedFigure figure)
    {
        Opened = figure;
        Changed?.Invoke();
    }

    /// <summary>Closes the explanation.</summary>
    public void Close()
    {
        if (Opened is not null)
        {
            Opened = null;
            Changed?.Invoke();
        }
    }
}
