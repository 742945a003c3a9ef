using Estimator.Engine.Measures;
using Estimator.Web.Entries;

namespace Estimator.Web.Tests.Entries;

public sealed class TypedTests
{
    [Theory]
    [InlineData("4500", 4500)]
    [InlineData("4,500 VA", 4500)]
    [InlineData("4.5 kVA", 4500)]
    [InlineData("4.5kW", 4500)]
    [InlineData("1200 w", 1200)]
    public void VoltAmperes_AsPeopleWriteThem_Read(string text, int va) => Assert.Equal(Power.FromVoltAmperes(va), Typed.VoltAmperes(text).Value);

    [Theory]
    [InlineData("$1,250.50", 125050)]
    [InlineData("0", 0)]
    public void Dollars_AsPeopleWriteThem_Read(string text, int cents) => Assert.Equal(Money.FromDollars(cents / 100m), Typed.Dollars(text).Value);

    [Theory]
    [InlineData("-1")]
    [InlineData("=1+1")]
    [InlineData("1e9")]
    [InlineData("99999999999999999999999999999999")]
    [InlineData("$")]
    [InlineData("VA")]
    public void Number_NotOne_SaidWithWhatIsAccepted(string text)
    {
        Assert.Contains("accepted is", Typed.Dollars(text).Problem, StringComparison.Ordinal);
        Assert.Contains(text[..1], Typed.Dollars(text).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Empty_EveryReader_StatesNothing()
    {
        Assert.Null(Typed.Length("").Value);
        Assert.Null(Typed.Whole("", "any").Value);
        Assert.Null(Typed.Amperes("", "any").Value);
        Assert.False(Typed.Needed(Typed.Amperes("", "any"), "amperes").Ok);
    }
}
