using Bunit;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Web.Tests.Figures;

public sealed class NumberTests : WebContext
{
    [Fact]
    public async Task Click_PriceOfAJob_OpensDownToStatedLeaves()
    {
        var priced = await OpenSampleAsync();
        var number = Render<Number>(p => p.Add(n => n.Of, priced.Estimate.Bid.Price).Add(n => n.Form, FigureForm.Whole).Add(n => n.Label, "Likely price").AddCascadingValue(priced.Source));
        var explanation = Render<Explanation>();

        number.Find("button").Click();

        Assert.Equal("true", number.Find("button").GetAttribute("aria-expanded"));
        explanation.WaitForAssertion(() => Assert.Contains("Likely price", explanation.Find("h2").TextContent, StringComparison.Ordinal));
        for (var depth = 0; depth < 40 && explanation.FindAll(".src").Count == 0; depth++)
        {
            explanation.Find("[aria-expanded=false]").Click();
        }

        Assert.NotEmpty(explanation.FindAll(".src"));
    }

    [Fact]
    public async Task Close_OpenNumber_IsCollapsedAgain()
    {
        var priced = await OpenSampleAsync();
        var number = Render<Number>(p => p.Add(n => n.Of, priced.Estimate.Labor.Total).AddCascadingValue(priced.Source));
        number.Find("button").Click();

        Services.GetRequiredService<Explainer>().Close();

        number.WaitForAssertion(() => Assert.Equal("false", number.Find("button").GetAttribute("aria-expanded")));
    }
}
