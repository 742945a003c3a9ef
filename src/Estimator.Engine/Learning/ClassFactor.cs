namespace Estimator.Engine.Learning;

/// <summary>What several jobs say together of a class of items in a phase.</summary>
/// <param name="Class">The class.</param>
/// <param name="Pooled">Its factor with the interval; its jobs are those that had something of the class.</param>
/// <param name="Apart">Whether the jobs tell the class apart from the rest of its phase: where all have nearly the same mix they do not.</param>
public sealed record ClassFactor(string Class, Pooled Pooled, bool Apart);
