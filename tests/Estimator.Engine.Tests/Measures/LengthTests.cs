using CsCheck;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Tests.Measures;

public sealed class LengthTests
{
    // International foot: 304.8 mm exactly (US National Bureau of Standards, 1959 agreement). Nanometres written out by hand.
    [Theory]
    [InlineData("12' 6\"", 3_810_000_000)]
    [InlineData("12' 6 1/2\"", 3_822_700_000)]
    [InlineData("12 6 1/2", 3_822_700_000)]
    [InlineData("12.5 ft", 3_810_000_000)]
    [InlineData("3.8 m", 3_800_000_000)]
    [InlineData("16 in", 406_400_000)]
    [InlineData("3/4\"", 19_050_000)]
    [InlineData("1/64 in", 396_875)]
    [InlineData("0'", 0)]
    [InlineData("-2' 6\"", -762_000_000)]
    public void Parse_FormsPeopleWrite_IsExact(string text, long nanometres) =>
        Assert.Equal(nanometres, Length.Parse(text).Value.ToNanometres());

    [Theory]
    [InlineData("12")]
    [InlineData("")]
    [InlineData("twelve feet")]
    [InlineData("3 1/0 in")]
    [InlineData("99999999999999999999 ft")]
    [InlineData("12 kg")]
    public void Parse_NoLength_SaysWhatIsAccepted(string text)
    {
        var parsed = Length.Parse(text);
        Assert.False(parsed.Ok);
        Assert.Contains("12' 6", parsed.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Parse_OfPrintedSixteenths_IsIdentity() =>
        Gen.Int[-1_000_000, 1_000_000].Sample(s => Length.Parse(Length.FromSixteenths(s).ToString()).Value == Length.FromSixteenths(s));
}
