using Estimator.Documents.Pricing;
using Estimator.Engine.Payments;

namespace Estimator.Documents.Tables;

/// <summary>What stands beside the price, as CSV: alternates, unit prices, schedule of values.</summary>
internal static class OfferTables
{
    internal static string Alternates(CustomerOffer offer) => Csv.Write(
        ["kind", "number", "name", "price_change_dollars", "hours_change", "problem"],
        offer.Alternates.Select(a => Row("alternate", a)).Concat(offer.Packages.Select(p => Row("package", p))));

    internal static string UnitPrices(CustomerOffer offer) => Csv.Write(
        ["what", "tried_in", "price_dollars", "hours"],
        offer.UnitPrices.Select(u => (CsvCell[])[u.What, u.Room, Amount(u.Price.Value), Amount(u.Hours.Value)]));

    internal static string ScheduleOfValues(PaymentPlan plan) => Csv.Write(
        ["line", "work", "value_dollars"],
        plan.Lines.Select(l => (CsvCell[])[l.Id, l.Title, Csv.Number(l.Value.Value)]).Append(["total", "Price", Csv.Number(plan.Total.Value)]));

    private static CsvCell[] Row(string kind, OfferedAlternate offered) =>
        [kind, offered.Number, offered.Name, offered.Priced is { } price ? Amount(price.Price.Value) : "", offered.Priced is { } hours ? Amount(hours.Hours.Value) : "", offered.Problem];

    private static CsvCell Amount(decimal value) => Csv.Number(decimal.Round(value, 2, MidpointRounding.AwayFromZero));
}
