using Estimator.Engine.Measures;

namespace Estimator.Engine.Tests.Measures;

/// <summary>Global trade item numbers.</summary>
public sealed class GtinTests
{
    // Worked examples of check digits on pages of GS1 organisations: gs1.org, "Check digit calculator" (629104150021 and 3); gs1.se, "Så beräknas kontrollsiffran" (730001100001 and 7);
    // gs1india.org, "How to calculate the check digit" (890400021003 and 7).
    [Theory]
    [InlineData("6291041500213", "06291041500213")]
    [InlineData("7300011000017", "07300011000017")]
    [InlineData("890 4000 21003 7", "08904000210037")]
    public void Read_PublishedExamples_AreFourteenDigits(string text, string digits) => Assert.Equal(digits, Gtin.Read(text).Value.ToString());

    [Fact]
    public void Read_AnyOtherLastDigit_IsRefused() =>
        Assert.All("012456789", last => Assert.Contains("would have to be 3", Gtin.Read($"629104150021{last}").Problem, StringComparison.Ordinal));

    [Theory]
    [InlineData("")]
    [InlineData("12345")]
    [InlineData("62910415O0213")]
    [InlineData("６２９１０４１５００２１３")]
    public void Read_NoSuchNumber_SaysWhatIsAccepted(string text) => Assert.Contains("8, 12, 13 or 14 digits", Gtin.Read(text).Problem, StringComparison.Ordinal);
}
