using CsCheck;
using Estimator.Engine.Contracts;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Payments;
using Estimator.TestKit;

namespace Estimator.Documents.Tests.Contracts;

/// <summary>A contract drawn at random: a bid with its terms, changes of it, and how far each line is at each invoice.</summary>
/// <param name="Plan">Schedule of values and terms.</param>
/// <param name="Price">The price of the bid.</param>
/// <param name="AsksDeposit">Whether the deposit is asked for.</param>
/// <param name="Steps">An invoice each: percents of what is left of the lines, and a change that is accepted before it.</param>
internal sealed record RandomContract(PaymentPlan Plan, Money Price, bool AsksDeposit, IReadOnlyList<(int[] Percents, ChangeOrder? Change)> Steps)
{
    private static readonly string[] Units = ["each", "foot", "hour"];

    private static readonly Gen<ChangeLine> Lines = Gen.Select(Gen.Int[1, 3], Gen.Int[1, 90_000], Gen.Int[0, 5_000], Gen.Int[0, 2], (kind, cents, hundredths, unit) =>
        new ChangeLine((ChangeLineKind)kind, $"{(ChangeLineKind)kind} work", hundredths / 100m, Units[unit], Dollars((ChangeLineKind)kind is ChangeLineKind.Credit ? -cents / 2 : cents)));

    private static readonly Gen<ChangeOrder> Changes = Gen.Select(Lines.Array[1, 9], Gen.Int[0, 12], (lines, days) =>
        new ChangeOrder(1, 2, [.. lines], lines.Aggregate(Money.Zero, (sum, l) => sum + l.Amount!.Value), days, "Asked for", []));

    private static readonly Gen<Percent?> Share = Gen.Select(Gen.Bool, Gen.Int[0, 3_000], (stated, hundredths) => stated ? Percent.FromHundredths(hundredths / 100m) : (Percent?)null);

    private static readonly Gen<PaymentTerms> Terms = Gen.Select(Share, Share, Gen.Int[-300_000, 300_000], Share, Gen.Int[1, 100].Array[0, 6], Gen.Int[0, 90], (deposit, capPercent, cap, retainage, shares, days) => new PaymentTerms
    {
        DepositPercent = deposit,
        DepositCapPercent = capPercent,
        DepositCap = cap >= 0 ? Dollars(cap) : null,
        RetainagePercent = retainage,
        DaysToPay = days,
        Milestones = [.. shares.Select((s, i) => new Milestone { Id = $"m{i}", Name = $"Point {i + 1}", SharePercent = Percent.FromHundredths(s) })],
    });

    /// <summary>Contracts over the random bids.</summary>
    internal static Gen<RandomContract> All { get; } = Gen.Select(Gen.Int[1, 10_000], Terms, Gen.Bool, Gen.Select(Gen.Int[0, 100].Array[10], Changes.Null(), (p, c) => (p, c)).Array[0, 5], (seed, terms, asks, steps) =>
    {
        var bid = RecalculatedBooks.RandomBid(seed);
        var plan = PaymentPlanning.Compute(SmallJobs.Estimate(bid.House.Job with { Payment = terms }), Catalogues.Shipped);
        return new RandomContract(plan, bid.Bid.Price.AsMoney().Value, asks, steps);
    });

    private static Money Dollars(int cents) => Money.FromDollars(cents / 100m);
}
