using CsCheck;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Pricing;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Pricing;

/// <summary>Cost to price against public guides, and what must hold for any bid.</summary>
public sealed class BidArithmeticTests
{
    private static readonly Job Job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 4), (DeviceKind.CeilingLight, 1), (DeviceKind.SinglePoleSwitch, 1));

    // AAA Math, "Markup": cost $4.00, markup 25 %, price $5.00.
    [Fact]
    public void Markup_OfTheLesson_GivesItsPrice() => Assert.Equal(5.00m, 4.00m + With(4.00m, 25, ProfitBasis.Markup).Profit);

    // Centennial College, Learning Centre, "Markup": rate on cost = M / C, rate on selling price = M / S, S = C + M. So 50 % of $40 is $20, which is a third of $60.
    [Fact]
    public void MarkupAndMargin_OfTheCollegeGuide_AreSharesOfCostAndOfPrice()
    {
        var (profit, margin) = With(40m, 50, ProfitBasis.Markup);
        Assert.Equal(20m, profit);
        Assert.Equal(100m / 3, margin, 10);
        // The other way round: a third of the price as margin is the same $20.
        Assert.Equal(20m, decimal.Round(With(40m, 100m / 3, ProfitBasis.Margin).Profit, 8, MidpointRounding.AwayFromZero));
    }

    // BLS, Employer Costs for Employee Compensation, construction, June 2022: straight wages 30.39, all compensation 43.56 dollars an hour worked.
    [Fact]
    public void Burden_OfThePublishedCosts_GivesTheirCompensation()
    {
        var burden = (43.56m / 30.39m - 1) * 100;
        var bid = SmallJobs.Estimate(Job with
        {
            Bid = new BidSettings
            {
                ElectricianWage = Money.FromDollars(30.39m),
                HelpersPerElectrician = 0,
                BurdenPercent = Percent.FromHundredths(decimal.Round(burden, 6, MidpointRounding.AwayFromZero)),
                ProductivePercent = Percent.FromHundredths(100),
            },
        }).Bid;
        Assert.Equal(43.56m, bid.HourCost.Value);
    }

    // California Regulation 1521 and Texas Rule 3.291: a contractor at one sum pays the tax on what he buys, so it is in the cost that overhead and profit are taken on.
    [Fact]
    public void SalesTax_OfAContractAtOneSum_IsPartOfTheCostOfMaterial()
    {
        var bid = Taxed(null, 8);
        var material = bid.DirectCost.Single(l => l.Id == "material").Amount.Value;
        Assert.Equal(decimal.Round(material * 0.08m, 2, MidpointRounding.AwayFromZero), bid.DirectCost.Single(l => l.Id == "material-tax").Amount.Value);
        Assert.DoesNotContain(bid.Additions, l => l.Id == "sales-tax");
        Assert.Equal(bid.Price, bid.PriceBeforeTax);
    }

    // California sales and use tax annotation 190.2545: the tax is on the separately stated charge for the property, with its markup.
    [Fact]
    public void SalesTax_OnMaterialCharged_IsOnItsPriceWithMarkup()
    {
        var bid = Taxed(SalesTaxOn.MaterialCharged, 8);
        Assert.DoesNotContain(bid.DirectCost, l => l.Id == "material-tax");
        var charged = bid.DirectCost.Single(l => l.Id == "material").Amount.Value * bid.PriceBeforeTax.Value / bid.DirectTotal.Value;
        Assert.Equal(decimal.Round(charged * 0.08m, 2, MidpointRounding.AwayFromZero), bid.Additions.Single(l => l.Id == "sales-tax").Amount.Value);
        Assert.Equal(bid.Price.Value, bid.PriceBeforeTax.Value + bid.Additions.Single(l => l.Id == "sales-tax").Amount.Value);
        // What is collected for the state is no profit.
        Assert.Equal(SmallJobs.Estimate(Job with { Bid = new BidSettings { MaterialTaxPercent = Percent.FromHundredths(0) } }).Bid.MarginPercent.Value, bid.MarginPercent.Value);
    }

    // Jefferson Parish, Louisiana, rule 35: sold and installed for a lump sum, the entire charge is subject to tax.
    [Fact]
    public void SalesTax_OnTheWholePrice_IsItsShareOfIt()
    {
        var bid = Taxed(SalesTaxOn.WholePrice, 9.75m);
        Assert.Equal(decimal.Round(bid.PriceBeforeTax.Value * 0.0975m, 2, MidpointRounding.AwayFromZero), bid.Additions.Single(l => l.Id == "sales-tax").Amount.Value);
    }

    [Fact]
    public void Allowance_OfTheCustomer_IsInCostInWordsAndInThePrice()
    {
        var bid = SmallJobs.Estimate(Job with { Bid = new BidSettings { Fees = Money.FromDollars(40), Allowances = [new Allowance { Id = "a", Text = "luminaires", Amount = Money.FromDollars(500) }] } }).Bid;
        Assert.Equal(500m, bid.DirectCost.Single(l => l.Id == "allowance-a").Amount.Value);
        Assert.Equal(40m, bid.DirectCost.Single(l => l.Id == "fees").Amount.Value);
        Assert.Contains(bid.Inclusions, l => l.Contains("$500 for luminaires", StringComparison.Ordinal));
    }

    [Fact]
    public void Scope_OfTheUser_StandsInsteadOfWhatWasComposed()
    {
        var edits = new[]
        {
            new ScopeEdit { Id = "out/patching", Part = ScopePart.Excluded, Text = "" },
            new ScopeEdit { Id = "in/material", Part = ScopePart.Included, Text = "All material." },
            new ScopeEdit { Id = "mine", Part = ScopePart.Assumed, Text = "=Parking in the drive." },
        };
        var bid = SmallJobs.Estimate(Job with { Bid = new BidSettings { Scope = [.. edits] } }).Bid;
        Assert.DoesNotContain(bid.Exclusions, l => l.StartsWith("Patching", StringComparison.Ordinal));
        Assert.Contains("All material.", bid.Inclusions);
        Assert.Contains("=Parking in the drive.", bid.Assumptions);
        Assert.Contains(bid.Scope, l => l is { Id: "out/patching", Text: "", Composed: not null });
    }

    [Fact]
    public void Bid_OfAnySettings_AddsUpAndExplainsItself() => Settings().Sample(
        settings =>
        {
            var estimate = SmallJobs.Estimate(Job with { Bid = settings });
            var bid = estimate.Bid;
            Assert.Equal(bid.DirectTotal.Value, bid.DirectCost.Sum(l => l.Amount.Value));
            Assert.Equal(bid.Price.Value, bid.DirectTotal.Value + bid.Additions.Sum(l => l.Amount.Value));
            Assert.All(bid.DirectCost.Concat(bid.Additions), l => Assert.Equal(decimal.Round(l.Amount.Value, 2, MidpointRounding.AwayFromZero), l.Amount.Value));
            Assert.True(bid.Low.Value <= bid.Price.Value && bid.Price.Value <= bid.High.Value);
            var earned = bid.Additions.Where(l => l.Id is "profit" or "rounding").Sum(l => l.Amount.Value);
            Assert.Equal(bid.PriceBeforeTax.Value == 0 ? 0 : earned / bid.PriceBeforeTax.Value * 100, bid.MarginPercent.Value, 8);
            Assert.Empty(ExplanationCheck.Problems(estimate.Book));
        },
        iter: 60);

    private static Gen<BidSettings> Settings() => Gen.Select(Gen.Int[0, 400], Gen.Int[0, 900], Gen.Int[0, 300], Gen.Int[0, 3], Gen.Int[0, 1], Gen.Int[0, 3], Gen.Int[0, 100_000]).Select(
        x => new BidSettings
        {
            OverheadPercent = Percent.FromHundredths(x.Item1 / 10m),
            ProfitPercent = Percent.FromHundredths(x.Item2 / 10m),
            MaterialTaxPercent = Percent.FromHundredths(x.Item3 / 30m),
            SalesTaxOn = x.Item4 == 0 ? null : (SalesTaxOn)x.Item4,
            ProfitBasis = (ProfitBasis)(x.Item5 + 1),
            RoundPriceTo = Money.FromDollars(x.Item6 * 5),
            Fees = x.Item7 % 3 == 0 ? null : Money.FromDollars(x.Item7 / 100m),
            Allowances = x.Item7 % 2 == 0 ? [] : [new Allowance { Id = "a", Text = "what is chosen later", Amount = Money.FromDollars(x.Item7 / 100m) }],
        });

    private static Bid Taxed(SalesTaxOn? on, decimal percent) =>
        SmallJobs.Estimate(Job with { Bid = new BidSettings { SalesTaxOn = on, MaterialTaxPercent = Percent.FromHundredths(percent) } }).Bid;

    private static (decimal Profit, decimal MarginPercent) With(decimal cost, decimal percent, ProfitBasis basis)
    {
        var page = new PageWriter(0);
        var (given, share) = (page.Given("c", "Cost", cost, Unit.Dollars), page.Given("p", "Share", percent, Unit.Percent));
        var profit = Markup.Profit(page, given, share, basis);
        var price = page.Compute(Operation.Sum, "p", "Price", Unit.Dollars, given, profit);
        return (profit.Value, Markup.Share(page, "Margin", profit, price).Value);
    }
}
