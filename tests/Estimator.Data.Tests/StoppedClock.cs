namespace Estimator.Data.Tests;

/// <summary>A clock that stands where the test puts it.</summary>
internal sealed class StoppedClock(DateTimeOffset now) : TimeProvider
{
    internal DateTimeOffset Now { get; set; } = now;

    public override DateTimeOffset GetUtcNow() => Now;
}
