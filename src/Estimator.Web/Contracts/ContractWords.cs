using Estimator.Engine.Contracts;
using Estimator.Engine.Payments;
using Estimator.Web.Figures;

namespace Estimator.Web.Contracts;

/// <summary>What states and events of bids, change orders and invoices are called.</summary>
public static class ContractWords
{
    /// <summary>What laws may say about a contract for work on a home.</summary>
    public const string Law = "State law may cap the deposit, ask for a written contract and a right to cancel, and set notices and deadlines for lien rights. Contracting for electrical work takes a license in most places. Check yours: this is no legal advice.";

    /// <summary>What became of a bid, with its day.</summary>
    public static string Of(BidLife life, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(life);
        return life.State(today) switch
        {
            BidState.Saved => "Saved",
            BidState.Sent => $"Sent {American.Day(life.SentOn!.Value)}, stands until {American.Day(life.StandsUntil!.Value)}",
            BidState.Expired => $"Expired {American.Day(life.StandsUntil!.Value.AddDays(1))}",
            BidState.Accepted => $"Accepted {American.Day(life.AcceptedOn!.Value)}",
            BidState.Declined => $"Declined {American.Day(life.Events[^1].On)}",
            _ => $"Withdrawn {American.Day(life.Events[^1].On)}",
        };
    }

    /// <summary>What happened to a bid.</summary>
    public static string Of(BidEventKind kind) => kind switch
    {
        BidEventKind.Sent => "Sent",
        BidEventKind.Accepted => "Accepted",
        BidEventKind.Declined => "Declined",
        BidEventKind.Withdrawn => "Withdrawn",
        BidEventKind.RoughInPassed => "Rough-in passed",
        _ => "Devices are in",
    };

    /// <summary>How far a change order is.</summary>
    public static string Of(ChangeState state) => state.ToString();

    /// <summary>How far an invoice is.</summary>
    public static string Of(InvoiceState state) => state is InvoiceState.PaidInPart ? "Paid in part" : state.ToString();
}
