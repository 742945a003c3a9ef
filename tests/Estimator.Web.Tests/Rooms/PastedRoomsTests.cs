using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Web.Rooms;

namespace Estimator.Web.Tests.Rooms;

public sealed class PastedRoomsTests
{
    private static readonly ImmutableArray<DeviceKind> Columns = [DeviceKind.DuplexReceptacle, DeviceKind.CeilingLight];

    [Fact]
    public void Read_RowsInGridOrder_RoomsWithCounts()
    {
        var pasted = Read("Bedroom 1\t11\t13\t5\t1\nHall\t4'\t10'\t\t2\r\n");
        Assert.Empty(pasted.Problems);
        Assert.Equal([RoomKind.Bedroom, RoomKind.Hall], pasted.Rooms.Select(r => r.Kind));
        Assert.Equal([(DeviceKind.DuplexReceptacle, 5), (DeviceKind.CeilingLight, 1)], pasted.Rooms[0].Counts.Select(c => (c.Kind, c.Count)));
        Assert.Equal((DeviceKind.CeilingLight, 2), (pasted.Rooms[1].Counts[0].Kind, pasted.Rooms[1].Counts[0].Count));
    }

    [Fact]
    public void Read_HeadNamesDevices_ColumnsFollowIt()
    {
        var pasted = Read("Room\tWidth\tLength\tRecessed\tSwitches\nDen\t10\t10\t4\t1");
        Assert.Equal([DeviceKind.RecessedLight, DeviceKind.SinglePoleSwitch], pasted.Rooms[0].Counts.Select(c => c.Kind));
    }

    [Theory]
    [InlineData("Den\tten\t10", "Row 1, column 2")]
    [InlineData("Den\t10\t10\t-3", "Row 1, column 4")]
    [InlineData("Den\t10\t10\t1\t1\t7", "beyond the last device")]
    [InlineData("Room\tWidth\tDepth\tToaster\nDen\t10\t10\t1", "found 'Toaster'")]
    [InlineData("\t10\t10", "the name of a room is accepted")]
    public void Read_WrongCell_NamesItAndTakesNothing(string text, string expected)
    {
        var pasted = Read(text);
        Assert.Empty(pasted.Rooms);
        Assert.Contains(pasted.Problems, p => p.Contains(expected, StringComparison.Ordinal));
    }

    private static PastedRooms Read(string text)
    {
        var next = 0;
        return PastedRooms.Read(text, Columns, () => $"R{++next}");
    }
}
