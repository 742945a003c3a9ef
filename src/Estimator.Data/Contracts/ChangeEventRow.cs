using Estimator.Data.Databases;

namespace Estimator.Data.Contracts;

/// <summary>Something that happened to a change order. Never changed.</summary>
internal sealed class ChangeEventRow : OwnedRow
{
    public string JobId { get; set; } = "";

    public int Number { get; set; }

    public int Sequence { get; set; }

    public required string Kind { get; set; }

    public DateOnly On { get; set; }

    public required string Text { get; set; }

    public required string Who { get; set; }

    public long AtUtcTicks { get; set; }
}
