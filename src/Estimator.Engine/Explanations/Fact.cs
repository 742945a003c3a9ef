using Estimator.Engine.Measures;

namespace Estimator.Engine.Explanations;

/// <summary>A number, its unit and the node that explains it, as rules compute with it.</summary>
/// <param name="Value">The number in <paramref name="Unit"/>.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Node">The node that explains it.</param>
public readonly record struct Fact(decimal Value, Unit Unit, NodeRef Node)
{
    /// <summary>As a length.</summary>
    public Explained<Length> AsLength() => new(Length.FromNanometres(decimal.ToInt64(Value)), Node);

    /// <summary>As money.</summary>
    public Explained<Money> AsMoney() => new(Money.FromDollars(Value), Node);

    /// <summary>As labor time.</summary>
    public Explained<LaborTime> AsHours() => new(LaborTime.FromHours(Value), Node);

    /// <summary>As the volume of a box.</summary>
    public Explained<Volume> AsVolume() => new(Volume.FromCubicInches(Value), Node);

    /// <summary>As a floor area.</summary>
    public Explained<Area> AsArea() => new(Area.FromSquareFeet(Value), Node);

    /// <summary>As apparent power.</summary>
    public Explained<Power> AsPower() => new(Power.FromVoltAmperes(Value), Node);

    /// <summary>As a current.</summary>
    public Explained<Current> AsCurrent() => new(Current.FromAmperes(Value), Node);

    /// <summary>As a plain number.</summary>
    public Explained<decimal> AsNumber() => new(Value, Node);

    /// <summary>As a whole number.</summary>
    public Explained<int> AsCount() => new(decimal.ToInt32(Value), Node);
}
