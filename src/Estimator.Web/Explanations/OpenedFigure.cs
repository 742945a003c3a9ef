using Estimator.Engine.Explanations;
using Estimator.Web.Figures;

namespace Estimator.Web.Explanations;

/// <summary>The figure whose explanation is open.</summary>
/// <param name="Owner">The number that opened it.</param>
/// <param name="Label">What it is.</param>
/// <param name="Context">Where it belongs, such as a room; may be empty.</param>
/// <param name="Text">How it is shown.</param>
/// <param name="Node">The node that explains it.</param>
/// <param name="Source">What it is explained from.</param>
public sealed record OpenedFigure(object Owner, string Label, string Context, FigureText Text, NodeRef Node, FigureSource Source);
