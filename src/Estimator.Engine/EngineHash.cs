namespace Estimator.Engine;

/// <summary>Tells one build of the engine and its rules from another.</summary>
/// <remarks>A deterministic build takes the module's id from its content, code and rule tables alike.</remarks>
public static class EngineHash
{
    /// <summary>Sixteen hexadecimal digits.</summary>
    public static string Value { get; } = typeof(EngineHash).Assembly.ManifestModule.ModuleVersionId.ToString("N")[..16];
}
