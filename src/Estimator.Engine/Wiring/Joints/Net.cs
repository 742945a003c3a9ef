namespace Estimator.Engine.Wiring.Joints;

/// <summary>Conductors that are joined to one another, wherever they run: the hot of the circuit, one traveller between two switches, a switched leg.</summary>
/// <param name="Function">What they are for.</param>
/// <param name="Control">
/// Index of the control group for switched and traveller conductors, and for a neutral that goes along with them from the first switch on, apart from
/// other neutrals; -1 otherwise.
/// </param>
/// <param name="Number">Which of several alike: the second hot of a 240 V circuit, a traveller of a later pair of switches.</param>
public readonly record struct Net(ConductorFunction Function, int Control, int Number)
{
    internal static Net Hot => new(ConductorFunction.Hot, -1, 0);

    internal static Net SecondHot => new(ConductorFunction.Hot, -1, 1);

    internal static Net Neutral => new(ConductorFunction.Neutral, -1, 0);

    internal static Net Ground => new(ConductorFunction.Ground, -1, 0);

    internal static Net Interconnect => new(ConductorFunction.Interconnect, -1, 0);

    internal static Net Spare => new(ConductorFunction.Spare, -1, 0);

    internal static Net Switched(int control) => new(ConductorFunction.Switched, control, 0);

    internal static Net Traveller(int control, int number) => new(ConductorFunction.Traveller, control, number);

    internal static Net NeutralOf(int control) => new(ConductorFunction.Neutral, control, 0);
}
