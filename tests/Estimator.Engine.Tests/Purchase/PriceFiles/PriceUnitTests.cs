using Estimator.Engine.Purchase.PriceFiles;

namespace Estimator.Engine.Tests.Purchase.PriceFiles;

/// <summary>What a price is for.</summary>
public sealed class PriceUnitTests
{
    // C is a hundred and M a thousand: Roman numerals; common practice in pricing wire and fittings, no source.
    [Theory]
    [InlineData("", 1, false)]
    [InlineData("EA", 1, false)]
    [InlineData("each", 1, false)]
    [InlineData("C", 100, false)]
    [InlineData("per C", 100, false)]
    [InlineData("M", 1000, false)]
    [InlineData("/M", 1000, false)]
    [InlineData("CFT", 100, false)]
    [InlineData("M ft", 1000, false)]
    [InlineData("FT", 1, false)]
    [InlineData("per 100", 100, false)]
    [InlineData("100 ea", 100, false)]
    [InlineData("1000 ft", 1000, false)]
    [InlineData("coil of 250 ft", 250, true)]
    [InlineData("RL250", 250, true)]
    [InlineData("250 ft coil", 250, true)]
    [InlineData("BX/100", 100, true)]
    [InlineData("box of 100", 100, true)]
    [InlineData("PK 10 ea", 10, true)]
    public void Read_WordsOfPriceFiles_IsUnitsAndPack(string text, int units, bool pack) => Assert.Equal(new PriceUnit(units, pack), PriceUnit.Read(text).Value);

    [Theory]
    [InlineData("box")]
    [InlineData("coil of 0 ft")]
    [InlineData("coil of 999999 ft")]
    [InlineData("dozen")]
    [InlineData("=1+1")]
    [InlineData("C 5")]
    public void Read_AnythingElse_SaysWhatIsAccepted(string text) => Assert.Contains("coil of 250 ft", PriceUnit.Read(text).Problem, StringComparison.Ordinal);
}
