using System.Collections.Concurrent;

namespace Estimator.Engine.Rules;

/// <summary>Hands out the rule tables, each read once.</summary>
internal static class RuleTables
{
    private static readonly ConcurrentDictionary<string, RuleTable> Known = new(StringComparer.Ordinal);
    private static readonly AsyncLocal<RuleTable?> Changed = new();

    /// <summary>The table with an id.</summary>
    internal static RuleTable Of(string id) => Changed.Value is { } changed && changed.Id == id ? changed : Known.GetOrAdd(id, RuleTable.Load);

    /// <summary>Puts a changed copy in a table's place for the current flow of control, so that a test can see who notices.</summary>
    internal static IDisposable Swap(RuleTable changed)
    {
        Changed.Value = changed;
        return new Restore();
    }

    private sealed class Restore : IDisposable
    {
        public void Dispose() => Changed.Value = null;
    }
}
