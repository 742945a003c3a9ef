using System.Collections.Immutable;

namespace Estimator.Engine.House;

/// <summary>All that the user states about one job: the house, the code it falls under, how this firm works and what it charges. Nothing derived is kept here.</summary>
public sealed record Job
{
    /// <summary>The form of the file that holds a job of this version.</summary>
    public const string CurrentSchema = "estimator-job/1";

    /// <summary>Form and version of the file.</summary>
    public string Schema { get; init; } = CurrentSchema;

    /// <summary>Stable id of the job.</summary>
    public required string Id { get; init; }

    /// <summary>What people call the job.</summary>
    public required string Name { get; init; }

    /// <summary>Free notes, never read by the engine.</summary>
    public string? Notes { get; init; }

    /// <summary>Where the job's geometry or counts were taken from, with licence and credit; null when the user typed them.</summary>
    public string? Origin { get; init; }

    /// <summary>Which code applies.</summary>
    public CodeBasis Code { get; init; } = new();

    /// <summary>Levels of the house, in any order.</summary>
    public required ImmutableArray<Level> Levels { get; init; }

    /// <summary>Buildings that stand apart from the house.</summary>
    public ImmutableArray<Building> Buildings { get; init; } = [];

    /// <summary>Panels, the service panel first.</summary>
    public required ImmutableArray<Panel> Panels { get; init; }

    /// <summary>Work on the service; null where nothing is done to it, or no more than hanging a new panel.</summary>
    public ServiceWork? Service { get; init; }

    /// <summary>Appliances and other equipment with a supply of their own or a place on a circuit.</summary>
    public ImmutableArray<Equipment> Equipment { get; init; } = [];

    /// <summary>Which switches act on which loads, where the user said so; the rest is proposed by the Controls stage.</summary>
    public ImmutableArray<Control> Controls { get; init; } = [];

    /// <summary>How this firm works; what is not set follows the practice table.</summary>
    public Practice Practice { get; init; } = new();

    /// <summary>Costs that the wiring is optimised on. They are not prices and stay with the job.</summary>
    public PlanningCosts PlanningCosts { get; init; } = new();

    /// <summary>From cost to price.</summary>
    public BidSettings Bid { get; init; } = new();

    /// <summary>When and how the price is paid; null where it follows the payment table throughout.</summary>
    public PaymentTerms? Payment { get; init; }

    /// <summary>Choices of the engine that the user overruled.</summary>
    public Pins Pins { get; init; } = new();

    /// <summary>What nobody knows yet; each becomes an exclusion, an allowance and a wider range.</summary>
    public ImmutableArray<Unknown> Unknowns { get; init; } = [];

    /// <summary>What the customer may take or leave, each with its own price; none is in the price of the job.</summary>
    public ImmutableArray<Alternate> Alternates { get; init; } = [];

    /// <summary>Alternates that are offered together.</summary>
    public ImmutableArray<AlternatePackage> AlternatePackages { get; init; } = [];

    /// <summary>Sentences about what the program proposed and the user has not confirmed, such as devices suggested on import.</summary>
    public ImmutableArray<string> Proposals { get; init; } = [];

    /// <summary>Hash of the engine and rules that made the results last stored with this job; null when none were.</summary>
    public string? EngineHash { get; init; }

    /// <summary>The catalogue that the job was last priced with, kept on request: file name to CSV text.</summary>
    public ImmutableSortedDictionary<string, CsvText> CatalogueSnapshot { get; init; } = ImmutableSortedDictionary<string, CsvText>.Empty;

    /// <summary>The job with each of its rooms changed.</summary>
    /// <param name="change">Makes the new room; the same one where nothing changes.</param>
    public Job WithRooms(Func<Room, Room> change) => this with { Levels = [.. Levels.Select(l => l with { Rooms = [.. l.Rooms.Select(change)] })] };
}
