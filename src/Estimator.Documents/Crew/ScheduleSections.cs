using System.Globalization;
using Estimator.Documents.Papers;
using Estimator.Engine;

namespace Estimator.Documents.Crew;

/// <summary>The sections of the crew's paper on what is brought and set: tools, devices, boxes with their cards.</summary>
internal sealed class ScheduleSections(Paper paper, JobEstimate estimate, CrewLabels labels)
{
    private const double CardGap = 10;

    internal void Kit()
    {
        paper.Section("Tools and consumables");
        paper.Say("What is in this job asks for them. Numbers that are not of the takeoff are starting points.", PaperLook.Soft);
        var table = new PaperTable(PaperColumn.Tick("", 0.5), PaperColumn.Figures("How many", 1), new("", 0.7), new("What", 5), new("Because of", 3));
        foreach (var group in KitLine.Of(estimate).GroupBy(l => l.Consumable))
        {
            table.Band(group.Key ? "Consumables" : "Tools");
            foreach (var line in group)
            {
                table.Row("", PaperFigures.Plain(line.Count), line.Unit == "foot" ? "ft" : line.Unit == "each" ? "" : line.Unit, line.Name, line.Because);
            }
        }

        paper.Table(table);
    }

    internal void DeviceSchedule()
    {
        paper.SectionOnNewPage("Device schedule by room");
        var table = new PaperTable(PaperColumn.Tick("", 0.5), new("Device", 4), PaperColumn.Figures("Height", 1.2), new("Box", 1.1), new("Circuit", 1.1), new("Note", 2.6));
        foreach (var room in SetDevice.Of(estimate, labels).GroupBy(d => d.Room))
        {
            table.Band(string.Create(CultureInfo.InvariantCulture, $"{room.Key}: {room.Count()}"));
            foreach (var device in room)
            {
                table.Row("", device.Name, device.Height, device.Box, device.Circuit, device.Note);
            }
        }

        paper.Table(table);
    }

    internal void BoxSchedule()
    {
        paper.Section("Box schedule");
        var table = new PaperTable(PaperColumn.Tick("", 0.5), new("Box", 1.4), new("Room and what it holds", 3.3), new("The box", 4.3), PaperColumn.Figures("Cu in", 0.85), PaperColumn.Figures("Needed", 1.05), PaperColumn.Figures("Cables", 1), PaperColumn.Figures("Splices", 1.05));
        foreach (var box in MadeUpBox.Of(estimate, labels))
        {
            table.Row("", box.Label, box.Serves, box.Item, box.VolumeIn3 is { } volume ? PaperFigures.Tenths(volume) : "", PaperFigures.Hundredths(box.NeededIn3), PaperFigures.Whole(box.Cables), PaperFigures.Whole(box.Splices));
        }

        paper.Table(table);
    }

    internal void Cards()
    {
        paper.SectionOnNewPage("Box cards");
        var width = (paper.Width - CardGap) / 2;
        foreach (var pair in MadeUpBox.Of(estimate, labels).Select(b => new BoxCard(estimate, labels, paper.Pen, b.Index, width)).Chunk(2))
        {
            paper.Draw(pair.Max(c => c.Height), (page, top) =>
            {
                for (var i = 0; i < pair.Length; i++)
                {
                    pair[i].Draw(page, Paper.LeftEdge + i * (width + CardGap), top);
                }
            });
        }
    }
}
