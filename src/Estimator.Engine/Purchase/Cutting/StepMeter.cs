namespace Estimator.Engine.Purchase.Cutting;

/// <summary>Counts the work done, so that a search ends after the same work on every machine.</summary>
/// <param name="limit">Steps that may be taken.</param>
internal sealed class StepMeter(long limit)
{
    private long _limit = limit;

    internal long Used { get; private set; }

    internal bool Spent => Used >= _limit;

    internal void Add(long steps) => Used += steps;

    /// <summary>Narrows the limit for a part of the search; the answer gives it back.</summary>
    internal long Allow(long steps)
    {
        var whole = _limit;
        _limit = Math.Min(_limit, Used + steps);
        return whole;
    }

    internal void Restore(long limit) => _limit = limit;
}
