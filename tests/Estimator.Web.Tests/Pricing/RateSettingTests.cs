using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Web.Jobs;
using Estimator.Web.Pricing;

namespace Estimator.Web.Tests.Pricing;

public sealed class RateSettingTests
{
    private static readonly Job Sample = JobStarts.Sample("basement-finish");

    private static IEnumerable<RateSetting> All => [.. RateSettings.OfAnHour, .. RateSettings.OfTheCrew, .. RateSettings.OfDriving, .. RateSettings.OfThePrice];

    public static TheoryData<string> Fields => [.. All.Select(s => s.Field)];

    [Theory]
    [MemberData(nameof(Fields))]
    public void Change_ANumber_IsReadBackFromItsOwnField(string field)
    {
        var setting = Setting(field);

        var changed = setting.Change(Sample, "12").Value(Sample);

        Assert.Equal("12", setting.Text(changed.Bid));
        Assert.Equal(1, All.Count(s => s.Text(changed.Bid) != s.Text(Sample.Bid)));
        Assert.Equal("", setting.Text(setting.Change(changed, " ").Value(changed).Bid));
    }

    [Theory]
    [InlineData("22 %", 22)]
    [InlineData("$1,250.50", 1250.50)]
    [InlineData("8.25", 8.25)]
    [InlineData("0", 0)]
    public void Read_AsPeopleType_IsTheNumber(string text, double number) => Assert.Equal((decimal)number, RateText.Read(text).Value);

    // A comma may be a decimal sign or stand between thousands: only the second is American, and guessing would multiply a rate by ten.
    [Theory]
    [InlineData("20,5")]
    [InlineData("=1+1")]
    [InlineData("@SUM(A1)")]
    [InlineData("-5")]
    [InlineData("<b>1</b>")]
    [InlineData("ten")]
    [InlineData("1e9")]
    [InlineData("%")]
    [InlineData("12,3456")]
    public void Read_AnythingElse_SaysWhatIsAccepted(string text) => Assert.Contains("accepted is a number such as", RateText.Read(text).Problem, StringComparison.Ordinal);

    [Theory]
    [InlineData("productive_percent", "0", "1 to 100 percent")]
    [InlineData("material_tax_percent", "101", "0 to 100 percent")]
    [InlineData("helpers_per_electrician", "21", "0 to 20 helpers")]
    [InlineData("valid_days", "0", "1 to 3650 days")]
    [InlineData("valid_days", "7.5", "whole days")]
    [InlineData("permit", "99999999", "10,000,000")]
    public void Change_OutOfRange_SaysTheRange(string field, string text, string accepted) => Assert.Contains(accepted, Setting(field).Change(Sample, text).Problem, StringComparison.Ordinal);

    // Above 99 percent of the price no cost is left.
    [Fact]
    public void Change_MarginOfAllThePrice_IsRefused()
    {
        var margin = Sample with { Bid = Sample.Bid with { ProfitBasis = ProfitBasis.Margin, ProfitPercent = Percent.FromHundredths(15) } };

        Assert.False(Setting("profit_percent").Change(margin, "100").Ok);
        Assert.True(Setting("profit_percent").Change(Sample with { Bid = Sample.Bid with { ProfitBasis = ProfitBasis.Markup } }, "100").Ok);
    }

    private static RateSetting Setting(string field) => All.Single(s => s.Field == field);
}
