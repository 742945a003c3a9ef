using System.Collections.Concurrent;
using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;

namespace Estimator.Engine.Edits;

/// <summary>The form of one kind of object in the job file. There is no second description of the file: what is read and written can be edited.</summary>
internal sealed class JobForm
{
    private static readonly ConcurrentDictionary<Type, JobForm> Known = new();

    private readonly Dictionary<string, FormField> _byName;

    private JobForm(Type type)
    {
        Fields = [.. JobJson.Options.GetTypeInfo(type).Properties.Select(FormField.Of)];
        _byName = Fields.ToDictionary(f => f.Name, StringComparer.Ordinal);
    }

    internal static JobForm Job => Of(typeof(Job));

    /// <summary>Its fields in the order of the file.</summary>
    internal ImmutableArray<FormField> Fields { get; }

    internal static JobForm Of(Type type) => Known.GetOrAdd(type, t => new JobForm(t));

    internal FormField? Field(string name) => _byName.GetValueOrDefault(name);
}
