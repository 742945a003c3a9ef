using System.Globalization;
using Estimator.Documents.House;
using Estimator.Web.Explanations;
using Estimator.Web.Jobs;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Plans;

/// <summary>The drawn level, with the card of the run or finding that is looked at.</summary>
public sealed partial class PlanPicture : IDisposable
{
    // Long enough that a pointer on its way elsewhere opens nothing.
    private static readonly TimeSpan Dwell = TimeSpan.FromMilliseconds(160);

    private const double LabelLetterDots = 7;
    private const double RingDots = 18;
    private int? _run;
    private DrawnFinding? _finding;
    private PlanSheet? _drawn;
    private CancellationTokenSource? _hovering;

    /// <summary>The job with everything worked out.</summary>
    [Parameter, EditorRequired]
    public PricedJob Priced { get; set; } = default!;

    /// <summary>What is drawn.</summary>
    [Parameter, EditorRequired]
    public PlanSheet Sheet { get; set; } = default!;

    /// <summary>Index of the circuit in hand, or all.</summary>
    [Parameter, EditorRequired]
    public int InHand { get; set; }

    /// <summary>Ids of what is marked because the reader came to see it.</summary>
    [Parameter]
    public IReadOnlySet<string> Sought { get; set; } = new HashSet<string>();

    /// <summary>Raised when another circuit is taken in hand on the picture.</summary>
    [Parameter]
    public EventCallback<int> OnCircuit { get; set; }

    [Inject]
    private Explainer Explainer { get; set; } = default!;

    [Inject]
    private TimeProvider Clock { get; set; } = default!;

    private SheetFrame Frame => Sheet.Frame;

    private double Dot => Frame.Dot;

    private double Width => Frame.Width + 2 * Frame.Margin;

    private double Height => Frame.Height + 2 * Frame.Margin;

    private string Spoken => $"Plan of {Sheet.Name}, {Frame.Across} by {Frame.Deep}. The same facts stand in the table below.";

    // The circuit in hand is drawn last, so that it lies on top, in the order in which its arrows go.
    private IEnumerable<DrawnRun> Ordered => Sheet.Runs.OrderBy(r => r.Circuit == InHand);

    private DrawnRun? FirstInHand => Sheet.Runs.FirstOrDefault(r => r.Circuit == InHand);

    // A ring round each device, outlet of equipment and panel that is sought.
    private IEnumerable<SheetPoint> Rings => Sheet.Outlets.Where(o => Sought.Contains(o.Id)).Select(o => o.At).Concat(Sheet.Panels.Where(p => Sought.Contains(p.Id)).Select(p => p.Spot));

    private DrawnRun? OpenRun => Sheet.Runs.FirstOrDefault(r => r.Run == _run);

    /// <inheritdoc/>
    public void Dispose() => Leave();

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (_drawn is not null && !ReferenceEquals(_drawn, Sheet))
        {
            Close();
        }

        _drawn = Sheet;
    }

    private static string F(double feet) => PathText.Of(feet);

    private static string Percent(double part) => (part * 100).ToString("0.##", CultureInfo.InvariantCulture);

    private string Font(double dots) => $"font-size:{F(dots * Dot)}px";

    private string At(SheetPoint point) => $"left:{Percent((point.X + Frame.Margin) / Width)}%;top:{Percent((point.Y + Frame.Margin) / Height)}%";

    // The card hangs towards the middle of the sheet.
    private string Side(SheetPoint point) => $"{(point.X > Frame.Width / 2 ? "toleft" : "toright")} {(point.Y > Frame.Height / 2 ? "up" : "down")}";

    private string TagText(CircuitTag tag) => tag.Circuit == InHand ? $"{tag.Text} · {RunWords.Cable(HomeRun(tag.Circuit).Cable)}" : tag.Text;

    private double TagWidth(CircuitTag tag) => tag.Circuit == InHand ? Math.Max(tag.Width, (TagText(tag).Length + 1) * LabelLetterDots * Dot) : tag.Width;

    private Engine.Wiring.Routing.Run HomeRun(int circuit) => Priced.Estimate.Wiring.Runs[Priced.Estimate.Wiring.Circuits[circuit].Runs[0]];

    private string Spell(DrawnRun run) => $"Run {run.Number}, {RunWords.Ends(Priced.Estimate, Priced.Estimate.Wiring.Runs[run.Run])}";

    private void Open(DrawnRun run)
    {
        Leave();
        (_run, _finding) = (run.Run, null);
    }

    private void Show(DrawnFinding finding) => (_run, _finding) = (null, finding);

    private void Close()
    {
        Leave();
        (_run, _finding) = (null, null);
    }

    // While a figure of the card is explained, the card stays.
    private async Task HoverAsync(DrawnRun run)
    {
        if (_run == run.Run || Explainer.Opened is not null)
        {
            return;
        }

        Leave();
        var hovering = _hovering = new CancellationTokenSource();
        try
        {
            await Task.Delay(Dwell, Clock, hovering.Token);
            Open(run);
        }
        catch (OperationCanceledException)
        {
            // The pointer went on.
        }
    }

    private void Leave()
    {
        _hovering?.Cancel();
        _hovering?.Dispose();
        _hovering = null;
    }
}
