using System.Globalization;
using Estimator.Documents.House;
using Estimator.Documents.Papers;
using Estimator.Engine;

namespace Estimator.Documents.Pricing;

/// <summary>The bid that a customer signs, as a PDF: price, scope, what is in it and what is not, terms. No cost, no hour, no markup.</summary>
public sealed class CustomerPaper
{
    private const double TermsHeight = 110;

    private readonly JobEstimate _estimate;
    private readonly Letterhead _letterhead;
    private readonly Paper _paper;
    private readonly CustomerOffer _offer;

    private CustomerPaper(Paper paper, JobEstimate estimate, Letterhead letterhead, CustomerOffer offer) => (_paper, _estimate, _letterhead, _offer) = (paper, estimate, letterhead, offer);

    /// <summary>The paper as a .pdf file. The same estimate gives the same bytes.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="letterhead">Who sends it, to whom.</param>
    /// <param name="offer">What is offered beside the price; null for nothing.</param>
    public static byte[] Write(JobEstimate estimate, Letterhead letterhead, CustomerOffer? offer = null)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        using var paper = new Paper(new PaperTitle("Bid", estimate.House.Job.Name, letterhead));
        new CustomerPaper(paper, estimate, letterhead, offer ?? CustomerOffer.None).Write();
        return paper.ToBytes();
    }

    private void Write()
    {
        Parties();
        Price();
        Scope();
        _paper.Section("What is included");
        _paper.List(_estimate.Bid.Inclusions);
        _paper.Section("What is not included");
        _paper.List(_estimate.Bid.Exclusions);
        _paper.Section("What the price rests on");
        _paper.List(_estimate.Bid.Assumptions);
        Allowances();
        Alternates();
        UnitPrices();
        Terms();
    }

    private void Parties()
    {
        if (SamplePrices.In(_estimate.Purchase))
        {
            _paper.Say($"Do not send yet. {Cautions.SamplePrices}", PaperLook.Warning);
        }

        foreach (var (label, text) in ((string, string)[])[("For", _letterhead.Customer), ("At", _letterhead.Site)])
        {
            // What is known stands in the title block already.
            if (text.Length == 0)
            {
                _paper.Line(label, "");
            }
        }
    }

    private void Price()
    {
        var bid = _estimate.Bid;
        _paper.Section("Price");
        _paper.Say(PaperFigures.Dollars(bid.Price.Value), PaperLook.Figure);
        if (bid.Additions.FirstOrDefault(l => l.Id == "sales-tax") is { } tax)
        {
            var taxed = new PaperTable(new("Made up of", 5), PaperColumn.Figures("Amount, $", 1));
            taxed.Row("Work and material", PaperFigures.Hundredths(bid.PriceBeforeTax.Value));
            taxed.Row("Sales tax", PaperFigures.Hundredths(tax.Amount.Value));
            taxed.Total("Price", PaperFigures.Hundredths(bid.Price.Value));
            _paper.Table(taxed);
        }

        _paper.Say($"Likely price. Between {PaperFigures.Dollars(bid.Low.Value)} if all goes well and {PaperFigures.Dollars(bid.High.Value)} if what is not known yet turns out badly.", PaperLook.Soft);
    }

    private void Scope()
    {
        _paper.Section("Scope");
        var rooms = new PaperTable(new("Room", 2.2), new("What is put in", 6), PaperColumn.Figures("Openings", 1));
        foreach (var (room, things, openings) in ScopeWords.ByRoom(_estimate))
        {
            rooms.Row(room, things, PaperFigures.Whole(openings));
        }

        rooms.Total("All rooms", "", PaperFigures.Whole(_estimate.Takeoff.Openings.Value));
        _paper.Table(rooms);
        var systems = new PaperTable(new("System", 2.2), new("What belongs to it", 6), PaperColumn.Figures("Openings", 1));
        foreach (var (system, things, openings) in ScopeWords.BySystem(_estimate))
        {
            systems.Row(system, things, PaperFigures.Whole(openings));
        }

        systems.Total("All systems", $"Circuits: {ScopeWords.Circuits(_estimate)}", PaperFigures.Whole(_estimate.Takeoff.Openings.Value));
        _paper.Table(systems);
    }

    private void Allowances()
    {
        var allowed = _estimate.House.Job.Unknowns.Where(u => u.Allowance is not null)
            .Select(u => (Text: u.Text.Length > 0 ? u.Text : PlaceWords.Kind(u.Topic), Dollars: u.Allowance!.Value.ToDollars()))
            .Concat(_estimate.House.Job.Bid.Allowances.Select(a => (a.Text, Dollars: a.Amount.ToDollars()))).ToList();
        if (allowed.Count == 0)
        {
            return;
        }

        _paper.Section("Allowances in the price");
        var table = new PaperTable(new("For what nobody has seen or chosen yet", 5), PaperColumn.Figures("Amount, $", 1));
        foreach (var (text, dollars) in allowed)
        {
            table.Row(text.Length > 0 ? text : "to be named", PaperFigures.Hundredths(dollars));
        }

        table.Total("Allowances", PaperFigures.Hundredths(allowed.Sum(a => a.Dollars)));
        _paper.Table(table);
    }

    private void Alternates()
    {
        List<OfferedAlternate> offered = [.. _offer.Alternates.Where(a => a.Priced is not null)];
        if (offered.Count == 0)
        {
            return;
        }

        _paper.Section("Alternates, not in the price");
        var table = new PaperTable(new("No.", 1), new("What may be taken", 6), PaperColumn.Figures("Changes the price by, $", 2), new("Taken, initials", 2));
        foreach (var alternate in offered)
        {
            table.Row(alternate.Number, alternate.Name, Change(alternate.Priced!.Price.Value), "");
        }

        foreach (var package in _offer.Packages.Where(p => p.Priced is not null))
        {
            table.Row(package.Number, $"Together: {package.Name}", Change(package.Priced!.Price.Value), "");
        }

        _paper.Table(table);
    }

    private void UnitPrices()
    {
        if (_offer.UnitPrices.IsEmpty)
        {
            return;
        }

        _paper.Section("Unit prices for later adds");
        _paper.Say("Each is worked out in a room of this job, from a circuit with room for it; what needs a circuit of its own, or comes once walls are closed, is priced before it is done.", PaperLook.Soft);
        var table = new PaperTable(new("What", 5), new("Worked out in", 3), PaperColumn.Figures("Price, $", 2));
        foreach (var unit in _offer.UnitPrices)
        {
            table.Row(unit.What, unit.Room, PaperFigures.Hundredths(unit.Price.Value));
        }

        _paper.Table(table);
    }

    private static string Change(decimal dollars) => dollars < 0 ? $"less {PaperFigures.Hundredths(-dollars)}" : $"more {PaperFigures.Hundredths(dollars)}";

    private void Terms()
    {
        _paper.Section("Terms");
        _paper.Need(TermsHeight);
        _paper.Line("Payment", _letterhead.PaymentTerms.Length > 0 ? _letterhead.PaymentTerms : "To be agreed in writing before work starts.");
        _paper.Line("Validity", string.Create(CultureInfo.InvariantCulture, $"This bid stands for {_estimate.Bid.ValidDays} days from its date."));
        _paper.Line("Changes", "Work that is not named here is priced and signed before it is done.");
        _paper.Sign("Customer", "Contractor");
    }
}
