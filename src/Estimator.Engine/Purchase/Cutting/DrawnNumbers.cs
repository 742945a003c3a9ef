namespace Estimator.Engine.Purchase.Cutting;

/// <summary>Numbers that look random and are the same for the same seed.</summary>
/// <remarks>Source: xorshift64*, from memory; "An experimental exploration of Marsaglia's xorshift generators, scrambled", ACM Transactions on Mathematical Software 42(4), 2016.</remarks>
internal struct DrawnNumbers(ulong seed)
{
    private ulong _state = seed | 1;

    internal int Below(int limit)
    {
        unchecked
        {
            _state ^= _state >> 12;
            _state ^= _state << 25;
            _state ^= _state >> 27;
            return (int)(((_state * 2685821657736338717UL) >> 33) % (ulong)limit);
        }
    }
}
