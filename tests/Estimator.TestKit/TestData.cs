using System.Runtime.CompilerServices;

namespace Estimator.TestKit;

/// <summary>Finds the data that tests read.</summary>
public static class TestData
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Here(), "..", "data"));

    public static string Repository { get; } = Path.GetFullPath(Path.Combine(Here(), "..", ".."));

    public static string Reference(string file) => Path.Combine(Root, "reference", file);

    public static string FloorPlan(string file) => Path.Combine(Root, "floorplans", file);

    private static string Here([CallerFilePath] string path = "") => Path.GetDirectoryName(path)!;
}
