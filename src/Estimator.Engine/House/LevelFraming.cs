using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>How a level is framed.</summary>
public sealed record LevelFraming
{
    /// <summary>Stud spacing, centre to centre; null follows the practice table.</summary>
    public Length? StudSpacing { get; init; }

    /// <summary>Stud depth; null follows the practice table.</summary>
    public Length? StudDepth { get; init; }

    /// <summary>Joist spacing, centre to centre; null follows the practice table.</summary>
    public Length? JoistSpacing { get; init; }

    /// <summary>Which way the ceiling joists run on the level's grid.</summary>
    public JoistDirection JoistDirection { get; init; } = JoistDirection.ShorterSpan;

    /// <summary>What lies under the floor of the lowest level.</summary>
    public UnderFloor Under { get; init; } = UnderFloor.Slab;

    /// <summary>Height of the crawl space under the lowest level; null leaves it out of labor.</summary>
    public Length? CrawlHeight { get; init; }

    /// <summary>Whether the space above the level's ceilings is a tight attic: low, insulated or hot.</summary>
    public bool TightAttic { get; init; }
}
