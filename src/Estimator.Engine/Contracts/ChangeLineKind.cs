namespace Estimator.Engine.Contracts;

/// <summary>What a line of a change order does.</summary>
public enum ChangeLineKind
{
    /// <summary>Work or material more than was agreed.</summary>
    Added = 1,

    /// <summary>Work of taking out what is in place.</summary>
    Removal,

    /// <summary>What is given back for work or material left out.</summary>
    Credit,
}
