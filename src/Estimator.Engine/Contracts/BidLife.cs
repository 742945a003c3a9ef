using System.Collections.Immutable;

namespace Estimator.Engine.Contracts;

/// <summary>All that happened to a saved bid; its state follows from that and from the day.</summary>
/// <param name="ValidDays">How long it stands once it is sent, in days.</param>
/// <param name="Events">What happened, in the order in which it was noted.</param>
public sealed record BidLife(int ValidDays, ImmutableArray<BidEvent> Events)
{
    /// <summary>The day on which it was sent last; null where it never was.</summary>
    public DateOnly? SentOn => Events.LastOrDefault(e => e.Kind is BidEventKind.Sent)?.On;

    /// <summary>The last day on which it stands; null where it was never sent.</summary>
    public DateOnly? StandsUntil => SentOn?.AddDays(ValidDays);

    /// <summary>The day on which it was accepted; null where it was not.</summary>
    public DateOnly? AcceptedOn => Day(BidEventKind.Accepted);

    /// <summary>The day on which its rough-in passed; null where it did not yet.</summary>
    public DateOnly? RoughInOn => Day(BidEventKind.RoughInPassed);

    /// <summary>The day on which its devices were in; null where they are not yet.</summary>
    public DateOnly? TrimmedOutOn => Day(BidEventKind.TrimmedOut);

    /// <summary>What became of it, seen on a day.</summary>
    /// <param name="today">The day.</param>
    public BidState State(DateOnly today) => Last switch
    {
        null => BidState.Saved,
        BidEventKind.Accepted or BidEventKind.RoughInPassed or BidEventKind.TrimmedOut => BidState.Accepted,
        BidEventKind.Declined => BidState.Declined,
        BidEventKind.Withdrawn => BidState.Withdrawn,
        _ => today > StandsUntil ? BidState.Expired : BidState.Sent,
    };

    /// <summary>What speaks against noting an event, as a sentence; null where nothing does. A bid that is older than it stands may still be accepted, if the firm keeps to it.</summary>
    /// <param name="happened">The event.</param>
    public string? Refusal(BidEvent happened)
    {
        ArgumentNullException.ThrowIfNull(happened);
        return (happened.Kind, Last) switch
        {
            (BidEventKind.RoughInPassed, BidEventKind.Accepted) => null,
            (BidEventKind.RoughInPassed, BidEventKind.RoughInPassed or BidEventKind.TrimmedOut) => "The rough-in passed already.",
            (BidEventKind.RoughInPassed, _) => "The rough-in is of a contract: note first that the bid was accepted.",
            (BidEventKind.TrimmedOut, BidEventKind.RoughInPassed) => null,
            (BidEventKind.TrimmedOut, BidEventKind.TrimmedOut) => "The trim-out is done already.",
            (BidEventKind.TrimmedOut, _) => "Trim-out follows the rough-in: note first that it passed.",
            (_, BidEventKind.Accepted or BidEventKind.RoughInPassed or BidEventKind.TrimmedOut) => "The bid was accepted: it is the contract, and what changes is a change order.",
            (BidEventKind.Sent, _) => null,
            (_, BidEventKind.Sent) => happened.On < SentOn ? $"Found {happened.On:yyyy-MM-dd}; the bid was sent on {SentOn:yyyy-MM-dd}, and that day or a later one is accepted." : null,
            _ => "The bid is not with the customer: send it first.",
        };
    }

    private BidEventKind? Last => Events.IsEmpty ? null : Events[^1].Kind;

    private DateOnly? Day(BidEventKind kind) => Events.FirstOrDefault(e => e.Kind == kind)?.On;
}
