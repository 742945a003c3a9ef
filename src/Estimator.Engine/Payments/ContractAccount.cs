using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Payments;

/// <summary>What a contract is worth, what was billed of it, and what the next invoice asks for.</summary>
/// <remarks>
/// Due = work done to date, less what earlier invoices asked for, less what is retained of it: University of California Facilities Manual, volume 5, chapter 15.1, and 48 CFR 52.232-5. The deposit comes off in
/// the share in which the work is billed (common practice, no source). All is whole cents; what rounding or a change leaves open, the last invoice settles.
/// </remarks>
/// <param name="Lines">Schedule of values, accepted change orders after it.</param>
/// <param name="Terms">What was agreed on payment.</param>
/// <param name="Billed">Earlier invoices that stand, in order.</param>
public sealed record ContractAccount(ImmutableArray<ContractLine> Lines, ContractTerms Terms, ImmutableArray<Invoice> Billed)
{
    private const int All = 100;

    /// <summary>What the contract is worth, changes included.</summary>
    public Money Sum => Total(Lines.Select(l => l.Value));

    /// <summary>Work billed.</summary>
    public Money Work => Total(Billed.Select(i => i.Work));

    /// <summary>What all invoices ask for.</summary>
    public Money Asked => Total(Billed.Select(i => i.Due));

    /// <summary>What no invoice asked for yet, what is retained included.</summary>
    public Money Open => Sum - Asked;

    /// <summary>What is retained of the work billed.</summary>
    public Money Held => Total(Billed.Select(i => i.Retained - i.Released));

    /// <summary>Deposit that was asked for and not taken off yet.</summary>
    public Money DepositLeft => Total(Billed.Select(i => i.Deposit - i.DepositApplied));

    /// <summary>Whether the last invoice was written.</summary>
    public bool Closed => Billed.Any(i => i.Kind is InvoiceKind.Final);

    /// <summary>The lines with what was billed of each, and nothing now.</summary>
    public ImmutableArray<InvoiceLine> Standing => [.. Lines.Select(l => new InvoiceLine(l.Id, l.Title, l.Value, BilledOf(l.Id), Money.Zero))];

    /// <summary>The invoice of the deposit, or a sentence that says why there is none.</summary>
    public Parsed<Invoice> DepositInvoice() =>
        Billed.Length > 0 ? Parsed<Invoice>.Failure("A deposit is asked for before anything else is billed.")
        : Terms.Deposit > Money.Zero ? Parsed<Invoice>.Success(new Invoice(InvoiceKind.Deposit, [], Terms.Deposit, Money.Zero, Money.Zero, Money.Zero))
        : Parsed<Invoice>.Failure("No deposit was agreed.");

    /// <summary>An invoice of work done, or a sentence that says why it cannot be.</summary>
    /// <param name="done">Work done to date of each line, by the line's id; a line left out stands as it was billed.</param>
    public Parsed<Invoice> Progress(IReadOnlyDictionary<string, Money> done)
    {
        ArgumentNullException.ThrowIfNull(done);
        if (done.Keys.FirstOrDefault(id => Lines.All(l => l.Id != id)) is { } unknown)
        {
            return Parsed<Invoice>.Failure($"There is no line {unknown} in the schedule of values.");
        }

        List<InvoiceLine> lines = [];
        foreach (var line in Standing)
        {
            var now = (done.TryGetValue(line.Id, out var toDate) ? toDate.RoundToCents() : line.Before) - line.Before;
            var (least, most) = line.Value < Money.Zero ? (line.Left, Money.Zero) : (Money.Zero, line.Left);
            if (now < least || now > most)
            {
                return Parsed<Invoice>.Failure($"{line.Title}: found {line.Before + now} to date; {line.Before + least} to {line.Before + most} is accepted: nothing is billed twice, and no line beyond its value.");
            }

            lines.Add(line with { Now = now });
        }

        return Settled(InvoiceKind.Progress, [.. lines]);
    }

    /// <summary>The last invoice: all that is left of each line, the rest of the deposit taken off, what was retained paid.</summary>
    public Parsed<Invoice> Final() => Settled(InvoiceKind.Final, [.. Standing.Select(l => l with { Now = l.Left })]);

    private Parsed<Invoice> Settled(InvoiceKind kind, ImmutableArray<InvoiceLine> lines)
    {
        if (Closed)
        {
            return Parsed<Invoice>.Failure("The last invoice was written already.");
        }

        var work = Total(lines.Select(l => l.Now));
        if (kind is InvoiceKind.Progress && lines.All(l => l.Now == Money.Zero))
        {
            return Parsed<Invoice>.Failure("Nothing is billed: say how much of a line is done.");
        }

        var last = kind is InvoiceKind.Final;
        var applied = last ? DepositLeft : Within((DepositAsked * DoneShare(work)).RoundToCents() - DepositTaken, Least(work, DepositLeft));
        var retained = last ? Money.Zero : Within(((Work + work) * (Terms.RetainagePercent / All)).RoundToCents() - Held, work - applied);
        var invoice = new Invoice(kind, lines, Money.Zero, applied, retained, last ? Held : Money.Zero);
        return invoice.Due < Money.Zero
            ? Parsed<Invoice>.Failure($"The invoice would come to {invoice.Due}: what is owed to the customer is paid back, not billed. Bill a credit together with work that is worth more.")
            : Parsed<Invoice>.Success(invoice);
    }

    private Money DepositAsked => Total(Billed.Select(i => i.Deposit));

    private Money DepositTaken => Total(Billed.Select(i => i.DepositApplied));

    private decimal DoneShare(Money now) => Sum > Money.Zero ? Math.Min(1m, (Work + now).ToDollars() / Sum.ToDollars()) : 1m;

    private Money BilledOf(string line) => Total(Billed.SelectMany(i => i.Lines).Where(l => l.Id == line).Select(l => l.Now));

    private static Money Within(Money wanted, Money most) => wanted < Money.Zero || most < Money.Zero ? Money.Zero : Least(wanted, most);

    private static Money Least(Money a, Money b) => a < b ? a : b;

    private static Money Total(IEnumerable<Money> amounts) => amounts.Aggregate(Money.Zero, (sum, a) => sum + a);
}
