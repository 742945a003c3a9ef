using Estimator.Web.Rooms;

namespace Estimator.Web.Tests.Rooms;

public sealed class RoomLineTests
{
    [Theory]
    [InlineData("Bedroom 11 x 13", "Bedroom", "11' 0\"", "13' 0\"")]
    [InlineData("Bedroom 2 11 x 13", "Bedroom 2", "11' 0\"", "13' 0\"")]
    [InlineData("Office 8' 6\" x 9'", "Office", "8' 6\"", "9' 0\"")]
    [InlineData("Den, 3.8 m X 4 m", "Den", "12' 5 5/8\"", "13' 1 1/2\"")]
    [InlineData("Box room 10×12", "Box room", "10' 0\"", "12' 0\"")]
    public void Parse_NameAndTwoSides_Read(string text, string name, string width, string depth)
    {
        var line = RoomLine.Parse(text);
        Assert.True(line.Ok, line.Problem);
        Assert.Equal((name, width, depth), (line.Value.Name, line.Value.Width.ToString(), line.Value.Depth.ToString()));
    }

    [Theory]
    [InlineData("")]
    [InlineData("Bedroom")]
    [InlineData("11 x 13")]
    [InlineData("Bedroom 0 x 13")]
    [InlineData("Bedroom 11 x =1+1")]
    [InlineData("<b>x</b>")]
    public void Parse_AnythingElse_SaysWhatIsAccepted(string text) => Assert.Contains("accepted", RoomLine.Parse(text).Problem, StringComparison.Ordinal);
}
