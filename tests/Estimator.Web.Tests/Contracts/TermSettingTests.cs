using Estimator.Engine.House;
using Estimator.Web.Contracts;
using Estimator.Web.Jobs;

namespace Estimator.Web.Tests.Contracts;

public sealed class TermSettingTests
{
    private static readonly Job Sample = JobStarts.Sample("basement-finish");

    public static TheoryData<string> Fields => [.. TermSetting.All.Select(s => s.Field)];

    [Theory]
    [MemberData(nameof(Fields))]
    public void Change_ANumber_IsReadBackFromItsOwnField(string field)
    {
        var changed = Setting(field).Change(Sample, "10").Value(Sample);
        Assert.Equal("10", Setting(field).Text(changed));
        Assert.Equal(1, TermSetting.All.Count(s => s.Text(changed) != s.Text(Sample)));
        Assert.Equal("", Setting(field).Text(Setting(field).Change(changed, " ").Value(changed)));
    }

    [Theory]
    [InlineData("days_to_pay", "15.5", "Found 15.5; accepted are whole days.")]
    [InlineData("days_to_pay", "fifteen", "accepted is a number such as")]
    [InlineData("days_to_pay", "-1", "accepted is a number such as")]
    [InlineData("days_to_pay", "4000", "accepted is")]
    [InlineData("deposit_percent", "101", "accepted is 0 to 100 percent")]
    public void Change_OfWhatCannotBe_SaysWhatIsAccepted(string field, string text, string said) => Assert.Contains(said, Setting(field).Change(Sample, text).Problem, StringComparison.Ordinal);

    private static TermSetting Setting(string field) => TermSetting.All.Single(s => s.Field == field);
}
