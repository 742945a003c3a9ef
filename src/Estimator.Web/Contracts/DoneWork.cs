using Estimator.Engine.Measures;
using Estimator.Engine.Payments;
using Estimator.Web.Pricing;

namespace Estimator.Web.Contracts;

/// <summary>Reads how much of each line is done, as people type it: 100, 37.5 or 37.5%.</summary>
internal static class DoneWork
{
    private const int All = 100;

    internal static Parsed<Dictionary<string, Money>> Of(ContractAccount account, IReadOnlyDictionary<string, string> typed)
    {
        var done = new Dictionary<string, Money>(StringComparer.Ordinal);
        foreach (var line in account.Lines.Where(l => typed.ContainsKey(l.Id)))
        {
            var read = RateText.Read(typed[line.Id]);
            if (!read.Ok || read.Value > All)
            {
                return Parsed<Dictionary<string, Money>>.Failure($"{line.Title}: {read.Problem ?? $"found {read.Value}%; 0 to {All}% is accepted."}");
            }

            done[line.Id] = (line.Value * (read.Value / All)).RoundToCents();
        }

        return Parsed<Dictionary<string, Money>>.Success(done);
    }
}
