using System.Text.RegularExpressions;
using Estimator.Web.Frame;
using MudBlazor;
using MudBlazor.Utilities;

namespace Estimator.Web.Tests.Frame;

public sealed class PaperThemeTests
{
    // The sheet of tokens is the source; the library's theme repeats it.
    [Theory]
    [InlineData("paper", nameof(Palette.Background))]
    [InlineData("paper-sunk", nameof(Palette.AppbarBackground))]
    [InlineData("paper-raised", nameof(Palette.Surface))]
    [InlineData("ink", nameof(Palette.TextPrimary))]
    [InlineData("ink-soft", nameof(Palette.TextSecondary))]
    [InlineData("copper", nameof(Palette.Primary))]
    [InlineData("on-copper", nameof(Palette.PrimaryContrastText))]
    [InlineData("hairline", nameof(Palette.LinesDefault))]
    [InlineData("rule", nameof(Palette.LinesInputs))]
    [InlineData("mend", nameof(Palette.Error))]
    [InlineData("held", nameof(Palette.Success))]
    public void Theme_EachColour_IsItsTokenByDayAndNight(string token, string colour)
    {
        var values = Regex.Matches(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "tokens.css")), $@"--{token}:\s*(#[0-9A-Fa-f]{{6}})").Select(m => m.Groups[1].Value).ToArray();
        Assert.Equal(2, values.Length);
        Assert.Equal(new MudColor(values[0]), typeof(Palette).GetProperty(colour)!.GetValue(PaperTheme.Theme.PaletteLight));
        Assert.Equal(new MudColor(values[1]), typeof(Palette).GetProperty(colour)!.GetValue(PaperTheme.Theme.PaletteDark));
    }
}
