using Estimator.Engine.Explanations;
using Estimator.Engine.Wiring.Circuits;

namespace Estimator.Web.Circuits;

/// <summary>A circuit's figures in the table.</summary>
/// <param name="Circuit">The circuit.</param>
/// <param name="Number">Its number on drawings.</param>
/// <param name="Cable">Its cables, by trade name.</param>
/// <param name="HomeRun">Length of its home run.</param>
/// <param name="CableFeet">Cable of all its runs.</param>
public sealed record CircuitRow(Circuit Circuit, int Number, string Cable, Fact HomeRun, Fact CableFeet);
