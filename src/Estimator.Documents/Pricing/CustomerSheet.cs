using System.Globalization;
using Estimator.Documents.House;
using Estimator.Documents.Workbooks;
using Estimator.Engine;

namespace Estimator.Documents.Pricing;

/// <summary>What a customer is sent: scope, price with range, what is in it and what is not, terms and cautions.</summary>
internal sealed class CustomerSheet
{
    internal const string Name = "Customer";

    private const int LinesOfAPage = 85;
    private const int CharactersOfALine = 95;
    private const string ToFillIn = " ";

    private readonly JobEstimate _estimate;
    private readonly Letterhead _letterhead;
    private readonly SheetPage _page;
    private readonly bool _alone;
    private readonly CustomerOffer _offer;
    private int _row = 1;
    private int _lines;

    private CustomerSheet(SheetPage page, JobEstimate estimate, Letterhead letterhead, bool alone, CustomerOffer offer) =>
        (_page, _estimate, _letterhead, _alone, _offer) = (page, estimate, letterhead, alone, offer);

    /// <summary>Writes the sheet.</summary>
    /// <param name="page">Where.</param>
    /// <param name="estimate">The estimate.</param>
    /// <param name="letterhead">Who sends it, to whom.</param>
    /// <param name="alone">Whether it goes out without the costs, its prices as plain numbers; else they follow the sheet of costs.</param>
    /// <param name="offer">What is offered beside the price; null for nothing.</param>
    internal static void Write(SheetPage page, JobEstimate estimate, Letterhead letterhead, bool alone, CustomerOffer? offer = null) =>
        new CustomerSheet(page, estimate, letterhead, alone, offer ?? CustomerOffer.None).Write();

    private void Write()
    {
        _page.Columns(18, 87);
        Head();
        Price();
        Scope();
        Section("What is included");
        List(_estimate.Bid.Inclusions);
        Section("What is not included");
        List(_estimate.Bid.Exclusions);
        Section("What the price rests on");
        List(_estimate.Bid.Assumptions);
        Offer();
        Terms();
        Section("Please note");
        List(Cautions.Safety);
        _page.Print(landscape: false, headingRows: 0, repeatFrom: 0, onePage: _lines <= LinesOfAPage);
    }

    private void Head()
    {
        var styles = _page.Styles;
        _page.Put(_row++, 1, _letterhead.Company.Length > 0 ? _letterhead.Company : "Bid", styles.Title);
        if (!_letterhead.CompanyLines.IsEmpty)
        {
            _page.Put(_row++, 1, string.Join("  ·  ", _letterhead.CompanyLines), styles.Subtitle);
        }

        if (SamplePrices.In(_estimate.Purchase))
        {
            _row++;
            Label("Do not send yet", styles.Warning);
            Say(Cautions.SamplePrices, styles.Warning);
        }

        _row++;
        Line("Work", _estimate.House.Job.Name, bold: true);
        if (_letterhead.Company.Length == 0)
        {
            Line("From", ToFillIn);
        }

        Line("For", _letterhead.Customer);
        Line("At", _letterhead.Site);
        Line("Date", _letterhead.IssuedOn?.ToString("MMMM d, yyyy", CultureInfo.InvariantCulture) ?? "");
        if (_letterhead.Revision.Length > 0)
        {
            Line("Revision", _letterhead.Revision);
        }
    }

    private void Price()
    {
        var (styles, bid) = (_page.Styles, _estimate.Bid);
        Section("Price");
        Amount("Likely", CostSheet.PriceName, bid.Price.Value, styles.Price);
        if (bid.Additions.FirstOrDefault(l => l.Id == "sales-tax") is { } tax)
        {
            Say($"Sales tax of ${tax.Amount.Value.ToString("#,##0.00", CultureInfo.InvariantCulture)} as estimated is in it.", styles.Body);
        }

        Amount("Low end", CostSheet.LowName, bid.Low.Value, styles.RangeEnd);
        Amount("High end", CostSheet.HighName, bid.High.Value, styles.RangeEnd);
        _lines += 4;
    }

    private void Amount(string label, string name, decimal dollars, CellLook look)
    {
        Label(label, _page.Styles.Note);
        if (_alone)
        {
            _page.Put(_row, 2, dollars, look);
            _page.CallIt(name, _row++, 2);
        }
        else
        {
            _page.Live(_row++, 2, name, dollars, look);
        }
    }

    private void Scope()
    {
        Section("Scope");
        foreach (var (room, things, _) in ScopeWords.ByRoom(_estimate))
        {
            Line(room, things);
        }

        Line("Circuits", ScopeWords.Circuits(_estimate));
    }

    private void Offer()
    {
        if (_offer.Alternates.Any(a => a.Priced is not null))
        {
            Section("Alternates, not in the price");
            foreach (var offered in _offer.Alternates.Concat(_offer.Packages).Where(a => a.Priced is not null))
            {
                Line($"No. {offered.Number}", $"{offered.Name}: {Change(offered.Priced!.Price.Value)}");
            }
        }

        if (!_offer.UnitPrices.IsEmpty)
        {
            Section("Unit prices for later adds");
            foreach (var unit in _offer.UnitPrices)
            {
                Line(unit.What, $"{Dollars(unit.Price.Value)}, as in {unit.Room}");
            }
        }
    }

    private static string Change(decimal dollars) => dollars < 0 ? $"{Dollars(-dollars)} less" : $"{Dollars(dollars)} more";

    private static string Dollars(decimal dollars) => string.Create(CultureInfo.InvariantCulture, $"${dollars:#,##0.00}");

    private void Terms()
    {
        Section("Terms");
        Line("Payment", _letterhead.PaymentTerms.Length > 0 ? _letterhead.PaymentTerms : "To be agreed in writing before work starts.");
        Line("Validity", string.Create(CultureInfo.InvariantCulture, $"This bid stands for {_estimate.Bid.ValidDays} days from its date."));
        Line("Accepted", "Name, signature, date: ______________________________________________");
    }

    private void Section(string title)
    {
        _row++;
        _page.Put(_row, 1, title, _page.Styles.Section);
        _page.Blank(_row++, 2, _page.Styles.Section);
        _lines += 2;
    }

    private void Line(string label, string text, bool bold = false)
    {
        Label(label, _page.Styles.Note);
        Say(text.Length > 0 ? text : ToFillIn, text.Length == 0 || text == ToFillIn ? _page.Styles.Text : bold ? _page.Styles.BodyBold : _page.Styles.Body);
    }

    private void List(IEnumerable<string> sentences)
    {
        foreach (var sentence in sentences)
        {
            Say(sentence, _page.Styles.Body);
        }
    }

    private void Label(string text, CellLook look) => _page.Put(_row, 1, text, look);

    private void Say(string text, CellLook look)
    {
        _page.Put(_row++, 2, text, look);
        _lines += 1 + (text.Length / CharactersOfALine) + text.Count(c => c == '\n');
    }
}
