using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Contracts;

/// <summary>What changes in a contract, and all that happened to that proposal; its state follows from that.</summary>
/// <param name="From">The revision that holds: of the contract, or of the last accepted change.</param>
/// <param name="To">The revision that is wanted.</param>
/// <param name="Lines">What is added, taken out and given back.</param>
/// <param name="Price">By how much the price changes.</param>
/// <param name="Days">Working days that it adds.</param>
/// <param name="Reason">Why, in words.</param>
/// <param name="Events">What happened, in the order in which it was noted.</param>
public sealed record ChangeOrder(int From, int To, ImmutableArray<ChangeLine> Lines, Money Price, int Days, string Reason, ImmutableArray<ChangeEvent> Events)
{
    /// <summary>How far it is.</summary>
    public ChangeState State => Events.IsEmpty ? ChangeState.Draft : Events[^1].Kind switch
    {
        ChangeEventKind.Sent => ChangeState.Sent,
        ChangeEventKind.Accepted => ChangeState.Accepted,
        ChangeEventKind.Declined => ChangeState.Declined,
        _ => ChangeState.Withdrawn,
    };

    /// <summary>Whether it may still become part of the contract.</summary>
    public bool Pending => State is ChangeState.Draft or ChangeState.Sent;

    /// <summary>What speaks against noting an event, as a sentence; null where nothing does.</summary>
    /// <param name="happened">The event.</param>
    public string? Refusal(ChangeEvent happened)
    {
        ArgumentNullException.ThrowIfNull(happened);
        return (happened.Kind, State) switch
        {
            (ChangeEventKind.Sent or ChangeEventKind.Withdrawn, ChangeState.Draft) => null,
            (_, ChangeState.Draft) => "The change order is a draft: send it first.",
            (ChangeEventKind.Sent, ChangeState.Sent) => "The change order was sent already.",
            (_, ChangeState.Sent) => null,
            (_, ChangeState.Accepted) => "The change order was accepted: it is part of the contract.",
            _ => "The change order is off: write a new one.",
        };
    }
}
