using Estimator.Documents.Pricing;
using Estimator.Engine.Explanations;
using Estimator.Engine.Payments;

namespace Estimator.Documents.Tables;

/// <summary>What stands beside the price, as CSV: alternates, unit prices, schedule of values.</summary>
internal static class OfferTables
{
    internal static string Alternates(CustomerOffer offer) => Csv.Write(
        ["kind", "number", "name", "price_more_dollars", "price_less_dollars", "hours_more", "hours_less", "problem"],
        offer.Alternates.Select(a => Row("alternate", a)).Concat(offer.Packages.Select(p => Row("package", p))));

    internal static string UnitPrices(CustomerOffer offer) => Csv.Write(
        ["what", "tried_in", "price_dollars", "hours"],
        offer.UnitPrices.Select(u => (string[])[u.What, u.Room, Amount(u.Price.Value), Amount(u.Hours.Value)]));

    internal static string ScheduleOfValues(PaymentPlan plan) => Csv.Write(
        ["line", "work", "value_dollars"],
        plan.Lines.Select(l => (string[])[l.Id, l.Title, Csv.Number(l.Value.Value)]).Append(["total", "Price", Csv.Number(plan.Total.Value)]));

    private static string[] Row(string kind, OfferedAlternate offered) =>
        [kind, offered.Number, offered.Name, .. offered.Priced is { } priced ? [.. Change(priced.Price), .. Change(priced.Hours)] : Enumerable.Repeat("", 4), offered.Problem];

    // A minus sign starts a formula for some programs, so what falls has a column of its own.
    private static string[] Change(Fact fact) => fact.Value < 0 ? ["", Amount(-fact.Value)] : [Amount(fact.Value), ""];

    private static string Amount(decimal value) => Csv.Number(decimal.Round(value, 2, MidpointRounding.AwayFromZero));
}
