using Estimator.Web.Figures;

namespace Estimator.Web.Tests.Figures;

public sealed class AmericanTests
{
    [Theory]
    [InlineData("0", "$0.00")]
    [InlineData("7512", "$7,512.00")]
    [InlineData("-71.005", "\u2212$71.01")]
    [InlineData("1234567.891", "$1,234,567.89")]
    public void Dollars_AnyAmount_ReadAsInTheUnitedStates(string amount, string expected) =>
        Assert.Equal(expected, American.Dollars(decimal.Parse(amount, American.Culture)));

    [Theory]
    [InlineData("70.5", "+$71")]
    [InlineData("-70.5", "\u2212$71")]
    [InlineData("0.4", "$0")]
    public void DollarChange_AnyChange_CarriesItsSign(string amount, string expected) =>
        Assert.Equal(expected, American.DollarChange(decimal.Parse(amount, American.Culture)));

    [Fact]
    public void DayAndTime_Afternoon_MonthFirstTwelveHours() =>
        Assert.Equal("Mar 2, 2026, 4:05 PM", American.DayAndTime(new DateTimeOffset(2026, 3, 2, 16, 5, 0, TimeSpan.Zero)));
}
