using System.Text.Json;
using System.Text.Json.Nodes;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;

namespace Estimator.Data.Companies;

/// <summary>What a new job starts with, as one text: the fields of a bid, and its terms of payment under their name in the job file.</summary>
/// <remarks>A text of an earlier release has no terms, and is read as if none were stated.</remarks>
internal static class StartingRates
{
    private const string Payment = "payment";

    internal static string Write(BidSettings rates, PaymentTerms payment)
    {
        var node = JsonSerializer.SerializeToNode(rates, JobJson.Options)!.AsObject();
        node[Payment] = JsonSerializer.SerializeToNode(payment, JobJson.Options);
        return node.ToJsonString(JobJson.Options);
    }

    internal static (BidSettings Rates, PaymentTerms Payment) Read(string text)
    {
        var node = JsonNode.Parse(text)!.AsObject();
        var payment = node[Payment].Deserialize<PaymentTerms>(JobJson.Options) ?? new PaymentTerms();
        node.Remove(Payment);
        return (node.Deserialize<BidSettings>(JobJson.Options)!, payment);
    }
}
