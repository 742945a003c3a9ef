using MudBlazor;

namespace Estimator.Web.Frame;

/// <summary>The library's theme, filled from the design tokens: paper by day, a dark truck at night.</summary>
/// <remarks>The values are those of <c>wwwroot/tokens.css</c>; a test holds them equal.</remarks>
public static class PaperTheme
{
    private const string Face = "Atkinson Hyperlegible Next";

    /// <summary>The theme.</summary>
    public static MudTheme Theme { get; } = new()
    {
        PaletteLight = new PaletteLight
        {
            Black = "#211C16",
            Background = "#F7F2E8",
            BackgroundGray = "#EEE6D7",
            Surface = "#FDFAF4",
            AppbarBackground = "#EEE6D7",
            AppbarText = "#211C16",
            DrawerBackground = "#EEE6D7",
            TextPrimary = "#211C16",
            TextSecondary = "#5A5146",
            TextDisabled = "#5A5146",
            ActionDefault = "#5A5146",
            ActionDisabled = "#5A5146",
            Primary = "#91461A",
            PrimaryContrastText = "#FFF8EE",
            Secondary = "#5A5146",
            Tertiary = "#B8632B",
            Success = "#2C6639",
            Warning = "#745000",
            Error = "#A71B39",
            ErrorContrastText = "#FFF6F5",
            Info = "#0067A3",
            LinesDefault = "#D8CDB9",
            LinesInputs = "#877B66",
            TableLines = "#D8CDB9",
            TableHover = "#F1E0CC",
            Divider = "#D8CDB9",
        },
        PaletteDark = new PaletteDark
        {
            Black = "#090E16",
            Background = "#0D131D",
            BackgroundGray = "#090E16",
            Surface = "#151E2C",
            AppbarBackground = "#090E16",
            AppbarText = "#D7DDE6",
            DrawerBackground = "#090E16",
            TextPrimary = "#D7DDE6",
            TextSecondary = "#98A3B4",
            TextDisabled = "#98A3B4",
            ActionDefault = "#98A3B4",
            ActionDisabled = "#98A3B4",
            Primary = "#E49B63",
            PrimaryContrastText = "#1B0F05",
            Secondary = "#98A3B4",
            Tertiary = "#C57A42",
            Success = "#7DC58C",
            Warning = "#E9BC45",
            Error = "#FF8C93",
            ErrorContrastText = "#2A060B",
            Info = "#62B1E8",
            LinesDefault = "#243044",
            LinesInputs = "#68768C",
            TableLines = "#243044",
            TableHover = "#2E221B",
            Divider = "#243044",
        },
        LayoutProperties = new LayoutProperties { DefaultBorderRadius = "2px" },
        Typography = new Typography
        {
            Default = new DefaultTypography { FontFamily = [Face, "Liberation Sans", "sans-serif"], FontSize = "14px", LineHeight = "20px", LetterSpacing = "normal" },
            Button = new ButtonTypography { TextTransform = "none", FontSize = "14px", LineHeight = "20px", FontWeight = "600", LetterSpacing = "normal" },
        },
    };
}
