using System.Collections.Immutable;

namespace Estimator.Web.Budget;

/// <summary>Something that an owner chose beyond the least, and the answers without it.</summary>
/// <param name="Words">In plain words.</param>
/// <param name="Without">The answers without it.</param>
public sealed record BudgetChoice(string Words, BudgetAnswers Without)
{
    /// <summary>The choices that some answers hold.</summary>
    public static ImmutableArray<BudgetChoice> In(BudgetAnswers answers)
    {
        var choices = ImmutableArray.CreateBuilder<BudgetChoice>();
        void Wish(Func<BudgetRoom, bool> has, Func<BudgetRoom, BudgetRoom> off, string words)
        {
            if (answers.Rooms.Any(has))
            {
                choices.Add(new BudgetChoice($"{words}: {string.Join(", ", answers.Rooms.Where(has).Select(r => r.Name))}", answers with { Rooms = [.. answers.Rooms.Select(off)] }));
            }
        }

        Wish(r => r.CloseReceptacles, r => r with { CloseReceptacles = false }, "Receptacles closer together");
        Wish(r => r.RecessedLights, r => r with { RecessedLights = false }, "Recessed lights on a dimmer");
        Wish(r => r.CeilingFan, r => r with { CeilingFan = false }, "Ceiling fan");
        foreach (var supply in BudgetSupply.All.Where(s => answers.Supplies.Contains(s.Kind)))
        {
            choices.Add(new BudgetChoice(supply.Title, answers with { Supplies = answers.Supplies.Remove(supply.Kind) }));
        }

        return choices.ToImmutable();
    }
}
