namespace Estimator.Engine.Explanations;

/// <summary>How a node's value follows from the values of its inputs. Applying it again gives the value again.</summary>
public enum Operation
{
    /// <summary>A leaf: something the user entered; the node names its place in the job file.</summary>
    Given = 1,

    /// <summary>A leaf: a cell of a rule table or of the catalogue; the node names table and row, which carry the citation.</summary>
    Row,

    /// <summary>A leaf: a whole number that a rule counts with and that no one disputes, such as two sides or 100 in a percentage.</summary>
    Constant,

    /// <summary>The sum of the inputs.</summary>
    Sum,

    /// <summary>The first input less all others.</summary>
    Difference,

    /// <summary>The product of the inputs.</summary>
    Product,

    /// <summary>The first input divided by the second.</summary>
    Quotient,

    /// <summary>The first input times the second as hundredths.</summary>
    PercentOf,

    /// <summary>The least input.</summary>
    Minimum,

    /// <summary>The greatest input.</summary>
    Maximum,

    /// <summary>How many inputs there are; their values do not matter.</summary>
    Count,

    /// <summary>The first input; the others are the reason for it.</summary>
    Because,

    /// <summary>The first input rounded up to a multiple of the second.</summary>
    RoundUp,

    /// <summary>The first input rounded down to a multiple of the second.</summary>
    RoundDown,

    /// <summary>The first input rounded to a multiple of the second, half away from zero.</summary>
    RoundNearest,

    /// <summary>The first input, a length in nanometres, in feet.</summary>
    InFeet,

    /// <summary>The difference of two inputs without its sign.</summary>
    Apart,

    /// <summary>Square-cornered distance of two points given as x, y, x, y.</summary>
    SquareDistance,

    /// <summary>Straight distance of two points given as x, y, x, y, to the nearest sixteenth of an inch.</summary>
    StraightDistance,

    /// <summary>A point on the way from the first input to the second: inputs are from, to, offset and whole length; to the nearest sixteenth of an inch.</summary>
    PartWay,

    /// <summary>The value below which a triangular distribution stays with a probability: inputs are percentile, least, likeliest and most, in percent.</summary>
    TrianglePercentile,

    /// <summary>
    /// The change in percent below which a share of seeded draws stays: inputs are percentile, number of draws, then for each factor its stream, the share of the whole that it
    /// acts on, and its least, likeliest and most, in percent.
    /// </summary>
    DrawnPercentile,

    /// <summary>The share of seeded draws that stay at or below a change in percent; inputs as for <see cref="DrawnPercentile"/>, the change in place of the percentile.</summary>
    DrawnShare,
}
