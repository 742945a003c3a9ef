using System.Globalization;
using Estimator.Documents.House;
using Estimator.Documents.Papers;
using Estimator.Engine;
using Estimator.Engine.Findings;
using Estimator.Engine.Panels;

namespace Estimator.Documents.Budget;

/// <summary>An owner's budget as a PDF: the range, what must be there and what is choice, what to settle, whom to ask what. No price of a unit.</summary>
public sealed class BudgetPaper
{
    private readonly JobEstimate _estimate;
    private readonly Paper _paper;

    private BudgetPaper(Paper paper, JobEstimate estimate) => (_paper, _estimate) = (paper, estimate);

    /// <summary>The paper as a .pdf file. The same estimate gives the same bytes.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="letterhead">Whose it is, and when.</param>
    public static byte[] Write(JobEstimate estimate, Letterhead letterhead)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        using var paper = new Paper(new PaperTitle("Budget", estimate.House.Job.Name, letterhead) { Cautions = Cautions.Safety.Add("A budget is a plan and no bid: ask firms for theirs.") });
        new BudgetPaper(paper, estimate).Write();
        return paper.ToBytes();
    }

    private void Write()
    {
        if (SamplePrices.In(_estimate.Purchase))
        {
            _paper.Say($"Not yet in dollars. {Cautions.SamplePrices}", PaperLook.Warning);
        }

        Range();
        Must();
        Circuits();
        Rooms();
        Settle();
        _paper.Section("What to ask the building department");
        _paper.List(PermitQuestions.For(_estimate.House.Job, ownerWorks: null));
        _paper.Section("What to ask each firm");
        _paper.List(FirmQuestions.All);
    }

    private void Range()
    {
        var bid = _estimate.Bid;
        _paper.Section("What it may cost");
        _paper.Say($"{PaperFigures.Dollars(bid.Low.Value)} to {PaperFigures.Dollars(bid.High.Value)}", PaperLook.Figure);
        _paper.Say($"Likely {PaperFigures.Dollars(bid.Price.Value)}, work and material, if it is built as drawn. The low end if all goes well, the high end if what is not known yet turns out badly.");
        _paper.Say(string.Create(CultureInfo.InvariantCulture, $"It takes about {_estimate.Labor.Total.Value:0} hours of work, {_estimate.Takeoff.Openings.Value:0} openings and {_estimate.Wiring.Circuits.Length} new circuits."), PaperLook.Soft);
    }

    private void Must()
    {
        _paper.Section("What must be there, and what is your choice");
        var table = new PaperTable(new("", 2), PaperColumn.Figures("In this plan", 1), PaperColumn.Figures("Asked for", 1), PaperColumn.Figures("Your choice", 1), new("Asked for by", 2));
        var must = MustHave.Of(_estimate).ToList();
        foreach (var system in must)
        {
            table.Row(system.System, PaperFigures.Whole(system.InJob), PaperFigures.Whole(system.Asked), PaperFigures.Whole(system.Choice), system.By);
        }

        table.Total("All devices", PaperFigures.Whole(must.Sum(m => m.InJob)), PaperFigures.Whole(must.Sum(m => m.Asked)), PaperFigures.Whole(must.Sum(m => m.Choice)));
        _paper.Table(table);
        foreach (var system in must.Where(m => m.InJob < m.Asked))
        {
            _paper.Say($"{system.System}: the plan has fewer than an empty room would be given. What stands there already may count; the findings say where something is missing.", PaperLook.Soft);
        }

        _paper.Say($"The least is what this program reads in NEC {(int)_estimate.House.Job.Code.Edition} for these rooms. What your inspector asks for prevails.", PaperLook.Soft);
    }

    private void Circuits()
    {
        var circuits = _estimate.Wiring.Circuits;
        if (circuits.IsEmpty)
        {
            return;
        }

        _paper.Section("New circuits");
        var table = new PaperTable(new("What it serves", 5), PaperColumn.Figures("Breaker, A", 1), new("Why", 2.4));
        foreach (var circuit in circuits)
        {
            table.Row(circuit.Name, PaperFigures.Whole(circuit.BreakerA.Value), Why(circuit.Kind));
        }

        _paper.Table(table);
    }

    private static string Why(CircuitKind kind) => kind switch
    {
        CircuitKind.SmallAppliance or CircuitKind.Laundry or CircuitKind.Bathroom or CircuitKind.Garage => "the code asks for it",
        CircuitKind.Individual => "equipment of its own",
        CircuitKind.Receptacles or CircuitKind.Lighting or CircuitKind.General => "for what the rooms have",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "There is no such kind."),
    };

    private void Rooms()
    {
        _paper.Section("Room by room");
        var table = new PaperTable(new("Room", 2.2), new("What is put in", 6), PaperColumn.Figures("Openings", 1));
        foreach (var (room, things, openings) in ScopeWords.ByRoom(_estimate))
        {
            table.Row(room, things, PaperFigures.Whole(openings));
        }

        table.Total("All rooms", "", PaperFigures.Whole(_estimate.Takeoff.Openings.Value));
        _paper.Table(table);
    }

    private void Settle()
    {
        var found = _estimate.Findings.Where(f => f.Severity is Severity.Mandatory).ToList();
        var unknown = _estimate.House.Job.Unknowns;
        if (found.Count + unknown.Length == 0)
        {
            return;
        }

        _paper.Section("To settle before it can be built");
        _paper.List(found.Select(f => $"{f.Text}{(f.Article.Length > 0 ? $" NEC {f.Article}." : "")}")
            .Concat(unknown.Select(u => $"Not known yet: {(u.Text.Length > 0 ? u.Text : PlaceWords.Kind(u.Topic))}.")));
    }
}
