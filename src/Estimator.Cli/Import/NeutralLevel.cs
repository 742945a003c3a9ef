namespace Estimator.Cli.Import;

/// <summary>A level of a plan.</summary>
public sealed record NeutralLevel(
    string Id, string Name, decimal ElevationFt, IReadOnlyList<NeutralRoom> Rooms, IReadOnlyList<NeutralOpening> Openings, IReadOnlyList<NeutralFixture> Fixtures);
