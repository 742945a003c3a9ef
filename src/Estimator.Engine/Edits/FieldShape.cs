namespace Estimator.Engine.Edits;

/// <summary>How a field of the job file is edited.</summary>
internal enum FieldShape
{
    /// <summary>As one value.</summary>
    Value = 1,

    /// <summary>Field by field: it is always there, as <c>practice</c> is.</summary>
    Section,

    /// <summary>Item by item, each found by its id.</summary>
    Items,

    /// <summary>Key by key.</summary>
    Map,
}
