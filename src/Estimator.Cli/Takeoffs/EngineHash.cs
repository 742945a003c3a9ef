namespace Estimator.Cli.Takeoffs;

/// <summary>Tells one build of the engine and its rules from another.</summary>
internal static class EngineHash
{
    internal static string Value { get; } = typeof(Engine.JobEstimate).Assembly.ManifestModule.ModuleVersionId.ToString("N")[..16];
}
