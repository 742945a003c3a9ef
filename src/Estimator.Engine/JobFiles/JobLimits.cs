
namespace Estimator.Engine.JobFiles;

/// <summary>How large a job may be. Beyond these a file is refused rather than worked on for hours.</summary>
public static class JobLimits
{
    /// <summary>Nesting of the file.</summary>
    public const int Depth = 32;

    /// <summary>Rooms of a job.</summary>
    public const int Rooms = 400;

    /// <summary>Corners of a room.</summary>
    public const int Corners = 300;

    /// <summary>Devices of a job.</summary>
    public const int Devices = 5000;

    /// <summary>Devices of one count.</summary>
    public const int Count = 200;

    /// <summary>Longest length, in feet.</summary>
    public const int Feet = 2000;

    /// <summary>Longest text, in characters.</summary>
    public const int Text = 10_000;

    /// <summary>Longest CSV file of a catalogue kept with a job, in characters.</summary>
    public const int CsvText = 5_000_000;

    /// <summary>Largest number of any other kind.</summary>
    public const int Number = 10_000_000;

    /// <summary>Panels, circuits and equipment of a job, each.</summary>
    public const int Many = 300;

    /// <summary>Alternates of a job, each worked out whole.</summary>
    public const int Alternates = 40;

    /// <summary>Spaces of a panel.</summary>
    public const int Spaces = 84;

    /// <summary>Rating of a panel, in amperes.</summary>
    public const int PanelAmperes = 600;

    /// <summary>Largest load or demand: what the largest panel carries at 240 V, and some.</summary>
    public const int VoltAmperes = 200_000;

    /// <summary>Share of the smaller room that two rooms of a level may overlap, in percent: published plans do so at wall lines.</summary>
    public const int OverlapPercent = 15;
}
