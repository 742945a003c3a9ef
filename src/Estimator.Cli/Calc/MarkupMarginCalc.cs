using System.Text.Json.Nodes;
using Estimator.Engine.Explanations;
using Estimator.Engine.Pricing;

namespace Estimator.Cli.Calc;

/// <summary>Markup and margin.</summary>
internal static class MarkupMarginCalc
{
    internal static CalcTopic Topic { get; } = new(
        "markup_margin", "Price from cost with markup or margin, and one from the other",
        """{"cost": 100, "markup_percent": 20}""",
        [CalcTopics.EditionField, new("cost", "number", "Cost."), new("markup_percent", "numbers", "Profit on cost."), new("margin_percent", "number", "Profit on price.", 0m, 99.99m)],
        Run);

    private static JsonObject Run(CalcInput input)
    {
        var page = input.Page;
        var cost = input.Given("cost", input.OptionalNumber("cost") ?? 100m, Unit.Dollars);
        var answer = new JsonObject();
        if (input.Has("margin_percent"))
        {
            var profit = Markup.ProfitFromMargin(page, cost, input.Given("margin_percent", Unit.Percent));
            answer["markup_percent"] = Markup.Share(page, "Markup", profit, cost).Value;
            Price(input, answer, cost.Value + profit.Value);
            return answer;
        }

        var results = input.Numbers("markup_percent").Select(m =>
        {
            var profit = Markup.ProfitFromMarkup(page, cost, input.Given("markup_percent", m, Unit.Percent));
            var price = page.Compute(Operation.Sum, "price", "Price", Unit.Dollars, cost, profit);
            return (Price: price.Value, Margin: Markup.Share(page, "Margin", profit, price).Value);
        }).ToList();
        if (results.Count == 0)
        {
            throw input.Wrong("markup_percent", "neither", "markup_percent or margin_percent");
        }

        answer["margin_percent"] = Answers.OneOrList(input.IsList("markup_percent"), results.Select(r => r.Margin));
        Price(input, answer, results[0].Price);
        return answer;
    }

    private static void Price(CalcInput input, JsonObject answer, decimal price)
    {
        if (input.Has("cost"))
        {
            answer["price"] = decimal.Round(price, 2, MidpointRounding.AwayFromZero);
        }
    }
}
