namespace Estimator.Data.Jobs;

/// <summary>What became of an append: <see cref="Appended"/>, <see cref="AppendConflict"/>, <see cref="AppendRefused"/> or <see cref="JobGone"/>.</summary>
public abstract record AppendResult
{
    private protected AppendResult()
    {
    }
}
