using Estimator.Documents.Tables;
using Estimator.Documents.Tests.Sums;

namespace Estimator.Documents.Tests.Tables;

/// <summary>What CSV files hold so that a sheet neither runs a user's text nor loses a number.</summary>
public sealed class CsvTests
{
    // OWASP ASVS 5.0, requirement 1.2.10: '=', '+', '-', '@', tab and null are escaped with a single quote where they come first; quoting by RFC 4180, 2.6 and 2.7.
    // Carriage return: OWASP, CSV Injection, from memory. The full-width forms are typed in other scripts; common practice, no source.
    [Theory]
    [InlineData("=1+1")]
    [InlineData("+1")]
    [InlineData("-1")]
    [InlineData("-2+3+cmd|' /C calc'!A0")]
    [InlineData("@SUM(A1)")]
    [InlineData("\t=1+1")]
    [InlineData("\r=1+1")]
    [InlineData("\0=1+1")]
    [InlineData("＝1+1")]
    public void Text_ThatStartsLikeAFormula_GetsAnApostrophe(string typed) => Assert.Equal($"'{typed}", Cell(typed));

    [Theory]
    [InlineData("plain")]
    [InlineData("1-2")]
    [InlineData("a, \"b\"\nc")]
    [InlineData("' =1")]
    [InlineData("a\rb")]
    public void Text_OfAnotherStart_StaysAsItIs(string typed) => Assert.Equal(typed, Cell(typed));

    [Theory]
    [InlineData(-35.25, "-35.25")]
    [InlineData(-0.5, "-0.5")]
    [InlineData(1250, "1250")]
    public void Number_BelowZero_StaysANumber(double value, string written) => Assert.Equal(written, Cell(Csv.Number((decimal)value)));

    private static string Cell(CsvCell cell) => CsvTable.Read(Csv.Write(["head"], [[cell]])).Single()["head"];
}
