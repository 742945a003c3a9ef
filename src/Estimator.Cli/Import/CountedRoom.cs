namespace Estimator.Cli.Import;

/// <summary>Device counts of one room.</summary>
public sealed record CountedRoom(string Space, string Name, IReadOnlyDictionary<string, int> Devices, string? Plan = null, string? Room = null);
