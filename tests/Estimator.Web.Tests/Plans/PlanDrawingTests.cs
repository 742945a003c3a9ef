using Estimator.Engine.Framing;
using Estimator.Web.Plans;

namespace Estimator.Web.Tests.Plans;

public sealed class PlanDrawingTests
{
    private const double Hair = 0.01;

    public static TheoryData<string> Houses => PlanHouses.Names;

    [Theory, MemberData(nameof(Houses))]
    public void Outlets_EveryDeviceOfTheEstimate_DrawnOnce(string house)
    {
        var layout = PlanHouses.Estimate(house).Layout;
        var drawn = PlanHouses.Sheets(house).SelectMany(s => s.Outlets).ToList();
        Assert.Equal(Enumerable.Range(0, layout.Devices.Length), drawn.Where(o => o.Device >= 0).Select(o => o.Device).Order());
        Assert.Equal(layout.Equipment.Select(e => e.Source.Id).Order(), drawn.Where(o => o.Device < 0).Select(o => o.Id).Order());
    }

    [Theory, MemberData(nameof(Houses))]
    public void Outlets_WallSign_StandsInItsRoomWithItsFootOnTheWall(string house)
    {
        var estimate = PlanHouses.Estimate(house);
        foreach (var sheet in PlanHouses.Sheets(house))
        {
            foreach (var outlet in sheet.Outlets.Where(o => o.Device >= 0 && o.Shape != "S" && estimate.Layout.Devices[o.Device].Place is { Mount: Mount.Wall, Side: >= 0 }))
            {
                var (sine, cosine) = Math.SinCos(outlet.Turn * Math.PI / 180);
                var foot = new SheetPoint(outlet.At.X - sine * sheet.Frame.Sign / 2, outlet.At.Y + cosine * sheet.Frame.Sign / 2);
                var box = estimate.Wiring.Boxes.FirstOrDefault(b => b.Devices.Contains(outlet.Device));
                Assert.True(foot.DistanceTo(outlet.Spot) < Hair + (box?.Devices.Length > 1 ? box.Devices.Length * sheet.Frame.Sign : 0), outlet.Id);
                Assert.Contains(sheet.Rooms, r => r.Outline.Zip(r.Outline.Skip(1).Append(r.Outline[0])).Any(s => FromSide(s.First, s.Second, outlet.Spot) < Hair));
            }
        }
    }

    [Theory, MemberData(nameof(Houses))]
    public void Runs_EveryRun_StartsAndEndsAtItsBoxes(string house)
    {
        var estimate = PlanHouses.Estimate(house);
        var sheets = PlanHouses.Sheets(house).ToList();
        for (var i = 0; i < estimate.Wiring.Runs.Length; i++)
        {
            var run = estimate.Wiring.Runs[i];
            var from = run.From < 0 ? estimate.Layout.Panels[estimate.Wiring.Circuits[run.Circuit].Panel].Place : estimate.Wiring.Boxes[run.From].Place;
            var to = estimate.Wiring.Boxes[run.To].Place;
            AssertEnd(sheets[from.Level], i, from, first: true);
            AssertEnd(sheets[to.Level], i, to, first: false);
        }
    }

    [Theory, MemberData(nameof(Houses))]
    public void Runs_OnOneLevel_DrawnNoLongerThanMeasured(string house)
    {
        var estimate = PlanHouses.Estimate(house);
        var checkedRuns = 0;
        foreach (var drawn in PlanHouses.Sheets(house).SelectMany(s => s.Runs).Where(r => r.Risers.IsEmpty && !estimate.Wiring.Runs[r.Run].Path.Bridged))
        {
            var measured = (double)estimate.Wiring.Runs[drawn.Run].Path.Horizontal.AsLength().Value.ToFeet();
            var line = drawn.Parts.Sum(p => p.Zip(p.Skip(1)).Sum(s => s.First.DistanceTo(s.Second)));
            Assert.True(line <= measured + 0.1, $"{drawn.Number}: drawn {line}, measured {measured}");
            checkedRuns++;
        }

        Assert.NotEqual(0, checkedRuns);
    }

    [Theory, MemberData(nameof(Houses))]
    public void Sheet_EverythingDrawn_LiesInsideTheViewBox(string house)
    {
        foreach (var sheet in PlanHouses.Sheets(house))
        {
            var margin = sheet.Frame.Margin;
            foreach (var point in Points(sheet))
            {
                Assert.InRange(point.X, -margin, sheet.Frame.Width + margin);
                Assert.InRange(point.Y, -margin, sheet.Frame.Height + margin);
            }
        }
    }

    [Theory, MemberData(nameof(Houses))]
    public void Rooms_NameOfEach_StandsInsideIt(string house)
    {
        foreach (var room in PlanHouses.Sheets(house).SelectMany(s => s.Rooms))
        {
            Assert.True(Crossings(room.Outline, room.Label) % 2 == 1, room.Name);
        }
    }

    [Theory, MemberData(nameof(Houses))]
    public void Tags_EachCircuitOnTheSheet_HasOneThatNamesIt(string house)
    {
        foreach (var sheet in PlanHouses.Sheets(house))
        {
            Assert.Equal(sheet.Runs.Select(r => r.Circuit).Distinct().Order(), sheet.Tags.Select(t => t.Circuit).Order());
            Assert.All(sheet.Tags, t => Assert.Equal($"{t.Circuit + 1}", t.Text));
        }
    }

    [Theory, MemberData(nameof(Houses))]
    public void Openings_EachOfTheHouse_DrawnOnceOnItsLevel(string house)
    {
        var framed = PlanHouses.Estimate(house).House;
        var drawn = PlanHouses.Sheets(house).SelectMany(s => s.Openings).Select(o => o.Id).ToList();
        Assert.Equal(framed.Openings.Select(o => o.Source.Id).Distinct().Order(), drawn.Order());
    }

    // The basement's rooms are drawn 5 inches apart: the opening between them takes just the wall away.
    [Fact]
    public void Openings_DoorBetweenRoomsWithAWall_GapIsThatWall()
    {
        var sheet = PlanHouses.Sheets("basement-finish").First();
        var door = sheet.Openings.First(o => o.Swing.Length > 0);
        var deep = door.Gap.Max(p => p.Y) - door.Gap.Min(p => p.Y);
        Assert.InRange(deep, 5 / 12.0, 5 / 12.0 + 0.1);
    }

    [Fact]
    public void Sheet_SizesWithoutPlaces_SaysThatItWasArranged()
    {
        Assert.True(PlanHouses.Sheets("sizes-only").Single().Arranged);
        Assert.All(PlanHouses.Sheets("two-storey-house"), s => Assert.False(s.Arranged));
    }

    [Fact]
    public void Frame_HouseAsTheUserDrewIt_NotMirrored()
    {
        var sheet = PlanHouses.Sheets("basement-finish").First();
        var (family, bath, mechanical) = (Room(sheet, "family"), Room(sheet, "bath"), Room(sheet, "mech"));
        Assert.True(bath.Label.Y < family.Label.Y, "the bath lies beyond the family room, up the sheet");
        Assert.True(bath.Label.X < mechanical.Label.X, "the bath lies left of the mechanical room");
    }

    [Fact]
    public void Findings_OfTheTwoStoreyHouse_StandInsideARoomUnderTheirNumber()
    {
        var shown = Estimator.Web.Findings.FindingList.Shown(PlanHouses.Estimate("two-storey-house").Findings).ToList();
        var drawn = PlanHouses.Sheets("two-storey-house").SelectMany(s => s.Findings.Select(f => (Sheet: s, Found: f))).ToList();
        Assert.NotEmpty(drawn);
        foreach (var (sheet, found) in drawn)
        {
            Assert.Same(shown[found.Number - 1], found.Finding);
            Assert.Contains(sheet.Rooms, r => Crossings(r.Outline, found.At) % 2 == 1);
        }
    }

    [Theory]
    [InlineData(0.1, 0.1, "A1")]
    [InlineData(23.9, 13, "D3")]
    [InlineData(99, 99, "D5")]
    public void Zone_PlaceInTheBasement_ByLetterAcrossAndNumberDown(double x, double y, string zone) =>
        Assert.Equal(zone, PlanHouses.Sheets("basement-finish").First().Frame.Zone(new SheetPoint(x, y)));

    [Fact]
    public void Strokes_ThirtyCircuits_NoTwoAlike() =>
        Assert.Equal(CircuitStroke.Distinct, Enumerable.Range(1, CircuitStroke.Distinct).Select(CircuitStroke.Classes).Distinct().Count());

    private static DrawnRoom Room(PlanSheet sheet, string id) => sheet.Rooms.Single(r => r.Id == id);

    private static void AssertEnd(PlanSheet sheet, int run, Placement place, bool first)
    {
        var drawn = sheet.Runs.Single(r => r.Run == run);
        var part = first ? drawn.Parts[0] : drawn.Parts[^1];
        Assert.True((first ? part[0] : part[^1]).DistanceTo(sheet.Frame.Point(place.Spot)) < Hair, $"run {drawn.Number}");
    }

    private static IEnumerable<SheetPoint> Points(PlanSheet sheet) =>
    [
        .. sheet.Rooms.SelectMany(r => r.Outline.Append(r.Label)), .. sheet.Walls.Blocks.SelectMany(b => b),
        .. sheet.Openings.SelectMany(o => o.Gap.Concat(o.Lines.SelectMany(l => l))),
        .. sheet.Outlets.SelectMany(o => new[] { new SheetPoint(o.At.X - sheet.Frame.Sign / 2, o.At.Y - sheet.Frame.Sign / 2), new SheetPoint(o.At.X + sheet.Frame.Sign / 2, o.At.Y + sheet.Frame.Sign / 2) }),
        .. sheet.Panels.SelectMany(p => p.Cabinet.Append(p.LabelAt)), .. sheet.Runs.SelectMany(r => r.Parts.SelectMany(p => p)), .. sheet.Tags.Select(t => t.At), .. sheet.Findings.Select(f => f.At),
    ];

    private static double FromSide(SheetPoint a, SheetPoint b, SheetPoint point)
    {
        var (direction, length) = (a.DirectionTo(b), a.DistanceTo(b));
        return a.Along(direction, Math.Clamp((point.X - a.X) * direction.X + (point.Y - a.Y) * direction.Y, 0, length)).DistanceTo(point);
    }

    private static int Crossings(IReadOnlyList<SheetPoint> outline, SheetPoint point) => outline.Zip(outline.Skip(1).Append(outline[0]))
        .Count(s => s.First.Y > point.Y != s.Second.Y > point.Y && point.X < s.First.X + (point.Y - s.First.Y) / (s.Second.Y - s.First.Y) * (s.Second.X - s.First.X));
}
