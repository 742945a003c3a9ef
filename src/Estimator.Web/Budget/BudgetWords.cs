using Estimator.Web.Figures;

namespace Estimator.Web.Budget;

/// <summary>The questions in plain words, and the answers to them.</summary>
public static class BudgetWords
{
    /// <summary>The question.</summary>
    public static string Question(BudgetStep step) => step switch
    {
        BudgetStep.Place => "What is to be wired?",
        BudgetStep.Rooms => "Which rooms, and how big?",
        BudgetStep.Walls => "Are the walls open now?",
        BudgetStep.Wishes => "What do you want in each room?",
        BudgetStep.Supplies => "Anything with a supply of its own?",
        BudgetStep.Panel => "Where is the panel, and is there room in it?",
        BudgetStep.Worker => "Who will do the work?",
        BudgetStep.Prices => "What do these cost near you?",
        BudgetStep.Done => "Your budget",
        _ => throw new ArgumentOutOfRangeException(nameof(step), step, "No such question."),
    };

    /// <summary>Why it is asked.</summary>
    public static string Why(BudgetStep step) => step switch
    {
        BudgetStep.Place => "A basement has rules of its own, and what stands already is wired otherwise than what is built new.",
        BudgetStep.Rooms => "Inside sizes, wall to wall; a rough one is good enough. Sizes read as 12, 12' 6\", 12.5 ft or 3.8 m.",
        BudgetStep.Walls => "Through bare studs cable is quickly pulled. Behind drywall it has to be fished, which takes more hours.",
        BudgetStep.Wishes => "Without a mark a room gets the least that the code asks for. Each mark is a choice, and its cost is shown as one.",
        BudgetStep.Supplies => "Each has its own circuit and takes room in the panel. The appliance itself is not in the budget.",
        BudgetStep.Panel => "Every new circuit needs a free space. Read the label inside the door and count the blanks; leave the cover screwed on.",
        BudgetStep.Worker => "Labor is most of the price. Whether an owner may do it himself is for the place where you live to say.",
        BudgetStep.Prices => "These carry most of the material in this budget. Until they come from a store near you, the dollars rest on samples.",
        BudgetStep.Done => "A job like any other now: its rooms, circuits, checks and lists can be opened and changed.",
        _ => throw new ArgumentOutOfRangeException(nameof(step), step, "No such question."),
    };

    /// <summary>The answer as it stands.</summary>
    public static string Answer(BudgetStep step, BudgetAnswers answers) => step switch
    {
        BudgetStep.Place => PlaceTitle(answers.Place),
        BudgetStep.Rooms => answers.Rooms.IsEmpty ? "No rooms yet" : string.Join(", ", answers.Rooms.Select(r => r.Name)),
        BudgetStep.Walls => WallsTitle(answers.Walls),
        BudgetStep.Wishes => BudgetChoice.In(answers with { Supplies = [] }) is { Length: > 0 } wishes ? string.Join("; ", wishes.Select(w => w.Words)) : "The least that the code asks for",
        BudgetStep.Supplies => answers.Supplies.IsEmpty ? "Nothing" : string.Join(", ", BudgetSupply.All.Where(s => answers.Supplies.Contains(s.Kind)).Select(s => s.Title)),
        BudgetStep.Panel => answers.Panel.Seen ? $"{American.Number(answers.Panel.Amperes)} A, {American.Number(answers.Panel.Free)} of {American.Count(answers.Panel.Spaces, "space")} free" : "Not looked at yet",
        BudgetStep.Worker => WorkerTitle(answers.Worker),
        _ => "",
    };

    /// <summary>The words for a place.</summary>
    public static string PlaceTitle(BudgetPlace place) => place switch
    {
        BudgetPlace.Basement => "A basement",
        BudgetPlace.Rooms => "Rooms that stand already",
        BudgetPlace.Addition => "An addition",
        _ => throw new ArgumentOutOfRangeException(nameof(place), place, "No such place."),
    };

    /// <summary>The words for the state of walls.</summary>
    public static string WallsTitle(BudgetWalls walls) => walls switch
    {
        BudgetWalls.Open => "Yes, bare studs",
        BudgetWalls.Finished => "No, drywall or plaster stays on",
        BudgetWalls.NotSure => "Not sure yet",
        _ => throw new ArgumentOutOfRangeException(nameof(walls), walls, "No such walls."),
    };

    /// <summary>The words for who works.</summary>
    public static string WorkerTitle(BudgetWorker worker) => worker switch
    {
        BudgetWorker.Firm => "An electrical firm",
        BudgetWorker.Owner => "I do, if the law here lets me",
        BudgetWorker.NotSure => "Not sure yet",
        _ => throw new ArgumentOutOfRangeException(nameof(worker), worker, "No such worker."),
    };
}
