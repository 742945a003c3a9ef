using System.Text.Json;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;

namespace Estimator.Web.Budget;

/// <summary>Turns answers into a job, and a job that they made back into answers.</summary>
public static class BudgetJob
{
    /// <summary>Id of the room in which the panel hangs where it is none of those that are wired.</summary>
    public const string Rest = "REST";

    private const string WallsUnknown = "walls";
    private const string PanelUnknown = "panel";
    private const string WorkerUnknown = "worker";
    private const string LevelId = "L1";

    /// <summary>The first job of some answers.</summary>
    public static Job Start(BudgetAnswers answers) => Make(answers, new Job
    {
        Id = $"budget-{Guid.NewGuid():N}"[..15],
        Name = $"{PlaceName(answers.Place)} budget",
        Levels = [],
        Panels = [],
    });

    /// <summary>The job with everything that the answers say; name, notes and code stay.</summary>
    public static Job Make(BudgetAnswers answers, Job job)
    {
        var bare = Bare(answers, job);
        var least = CodeMinimum.Propose(bare);
        var close = CodeMinimum.Propose(bare with { Practice = bare.Practice with { ReceptacleSpacing = BudgetTable.CloseReceptacles } });
        var rooms = least.Levels[0].Rooms.Zip(close.Levels[0].Rooms, (l, c) => answers.Rooms.FirstOrDefault(r => r.Id == l.Id) is { } wish
            ? l with { Counts = BudgetWishes.Counts(wish, l.Counts, c.Counts) }
            : l with { Counts = answers.Rooms.IsEmpty ? [] : [.. l.Counts.Where(d => d.Kind.IsAlarm())] });
        return least with { Levels = [least.Levels[0] with { Rooms = [.. rooms] }] };
    }

    /// <summary>The answers that made a job; null for a job that says more than answers can.</summary>
    public static BudgetAnswers? Read(Job job)
    {
        if (job is not { Levels: [var level], Panels: [{ Existing: true } panel] } || level.Rooms.Any(r => r.Size is null))
        {
            return null;
        }

        var rooms = level.Rooms.Where(r => r.Id != Rest).ToList();
        var plain = new BudgetAnswers
        {
            Place = level.Basement ? BudgetPlace.Basement : level.Name == PlaceName(BudgetPlace.Addition) ? BudgetPlace.Addition : BudgetPlace.Rooms,
            Rooms = [.. rooms.Select(r => new BudgetRoom(r.Id, r.Name, r.Kind, r.Size!))],
            Walls = Has(job, WallsUnknown) ? BudgetWalls.NotSure : rooms.Any(r => r.Walls is WallState.Finished) || level.Rooms.All(r => r.Walls is WallState.Finished) ? BudgetWalls.Finished : BudgetWalls.Open,
            Supplies = [.. job.Equipment.Select(e => e.Kind)],
            Panel = new BudgetPanel
            {
                Room = panel.Room == Rest ? "" : panel.Room,
                Seen = !Has(job, PanelUnknown),
                Amperes = (int)panel.RatingA.ToAmperes(),
                Spaces = panel.Spaces,
                Free = panel.Spaces - panel.Circuits.Length,
            },
            Worker = Has(job, WorkerUnknown) ? BudgetWorker.NotSure : job.Bid.ElectricianWage == Money.Zero ? BudgetWorker.Owner : BudgetWorker.Firm,
            HourRate = job.Bid.ElectricianWage is { } wage && wage > Money.Zero ? wage.ToDollars() : null,
        };
        var least = Make(plain, job);
        var answers = plain with
        {
            Rooms = [.. plain.Rooms.Select(r => BudgetWishes.Read(r, rooms.Single(x => x.Id == r.Id).Counts, least.Levels[0].Rooms.Single(x => x.Id == r.Id).Counts))],
        };

        // A job that was worked on elsewhere would lose that work here.
        return JobEditing.Between(job, Make(answers, job), "budget", "").Changes.IsEmpty ? answers : null;
    }

    /// <summary>What a place is called.</summary>
    public static string PlaceName(BudgetPlace place) => place switch
    {
        BudgetPlace.Basement => "Basement",
        BudgetPlace.Rooms => "Rooms",
        BudgetPlace.Addition => "Addition",
        _ => throw new ArgumentOutOfRangeException(nameof(place), place, "No such place."),
    };

    private static Job Bare(BudgetAnswers answers, Job job)
    {
        var walls = answers.Walls is BudgetWalls.Open ? WallState.Open : WallState.Finished;
        var rooms = answers.Rooms.Select(r => new Room { Id = r.Id, Name = r.Name, Kind = r.Kind, Size = r.Size, Walls = walls }).ToList();
        var panelRoom = rooms.Find(r => r.Id == answers.Panel.Room);
        if (panelRoom is null)
        {
            panelRoom = new Room { Id = Rest, Name = BudgetTable.RestName, Kind = RoomKind.Utility, Size = BudgetTable.RestSize, Finished = false, Walls = walls };
            rooms.Add(panelRoom);
        }

        return job with
        {
            Levels = [new Level { Id = LevelId, Name = PlaceName(answers.Place), Basement = answers.Place is BudgetPlace.Basement, Rooms = [.. rooms] }],
            Panels = [PanelIn(panelRoom, answers.Panel)],
            Equipment = [.. answers.Supplies.Select(k => new Equipment { Id = JsonNamingPolicy.SnakeCaseLower.ConvertName(k.ToString()), Kind = k, Room = BudgetSupply.RoomFor(k, answers.Rooms, panelRoom.Id) })],
            Bid = Bid(answers),
            Unknowns = [.. Unknowns(answers)],
            Proposals = [],
        };
    }

    private static Panel PanelIn(Room room, BudgetPanel panel) => new()
    {
        Id = "P1",
        Name = "Main panel",
        Room = room.Id,
        Wall = new WallSpot(1, Length.FromSixteenths(room.Size!.Width.ToSixteenths() / 2)),
        RatingA = Current.FromAmperes(panel.Amperes),
        Spaces = panel.Spaces,
        Existing = true,
        Circuits =
        [
            .. Enumerable.Range(1, Math.Max(0, panel.Spaces - panel.Free)).Select(n => new ExistingCircuit
            {
                Id = $"E{n}", Name = "There already", BreakerA = BudgetTable.ExistingBreaker,
            }),
        ],
    };

    // A rate that a firm names holds all of its own cost and profit; material is then counted as bought.
    private static BidSettings Bid(BudgetAnswers answers) => (answers.Worker, answers.HourRate) switch
    {
        (BudgetWorker.Owner, _) => new BidSettings { ElectricianWage = Money.Zero, HelperWage = Money.Zero, OverheadPercent = default(Percent), ProfitPercent = default(Percent) },
        (_, { } rate) => new BidSettings
        {
            ElectricianWage = Money.FromDollars(rate),
            HelpersPerElectrician = 0,
            BurdenPercent = default(Percent),
            ProductivePercent = Percent.FromHundredths(100),
            OverheadPercent = default(Percent),
            ProfitPercent = default(Percent),
        },
        _ => new BidSettings(),
    };

    private static IEnumerable<Unknown> Unknowns(BudgetAnswers answers)
    {
        if (answers.Walls is BudgetWalls.NotSure)
        {
            yield return new Unknown { Id = WallsUnknown, Topic = UnknownTopic.WallType, Text = "Whether the walls will be open: counted as finished" };
        }

        if (!answers.Panel.Seen)
        {
            yield return new Unknown { Id = PanelUnknown, Topic = UnknownTopic.Service, Text = "The panel: its make, its main and its free spaces" };
        }

        if (answers.Worker is BudgetWorker.NotSure)
        {
            yield return new Unknown { Id = WorkerUnknown, Topic = UnknownTopic.Other, Text = "Who does the work: counted as a firm" };
        }
    }

    private static bool Has(Job job, string unknown) => job.Unknowns.Any(u => u.Id == unknown);
}
