using CsCheck;
using Estimator.Engine;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.Web.Budget;
using Estimator.Web.Catalogues;
using Estimator.Web.Jobs;

namespace Estimator.Web.Tests.Budget;

public sealed class BudgetJobTests
{
    private static readonly Gen<BudgetRoom> Rooms = Gen.Select(
        Gen.Int[0, BudgetTable.Rooms.Length - 1].Select(i => BudgetTable.Rooms[i].Kind), Gen.Int[4, 40], Gen.Int[4, 40], Gen.Bool, Gen.Bool, Gen.Bool,
        (kind, width, depth, close, recessed, fan) => new BudgetRoom("", "Room", kind, new RectangleSize(Length.FromFeet(width), Length.FromFeet(depth)))
        {
            CloseReceptacles = close,
            RecessedLights = recessed,
            CeilingFan = fan,
        });

    private static readonly Gen<BudgetAnswers> Answers = Gen.Select(
        Rooms.Array[0, 6], Gen.Enum<BudgetPlace>(), Gen.Enum<BudgetWalls>(), Gen.Enum<BudgetWorker>(), Gen.Bool, Gen.Int[0, 40], Gen.Bool.Array[BudgetSupply.All.Length],
        (rooms, place, walls, worker, seen, free, supplies) => new BudgetAnswers
        {
            Place = place,
            Rooms = [.. rooms.Select((r, i) => r with { Id = $"R{i + 1}" })],
            Walls = walls,
            Worker = worker,
            Panel = new BudgetPanel { Seen = seen, Free = free },
            Supplies = [.. BudgetSupply.All.Where((_, i) => supplies[i]).Select(s => s.Kind)],
        });

    [Fact]
    public void Read_OfAMadeJob_MakesTheSameJobAgain() => Answers.Sample(
        answers =>
        {
            var job = BudgetJob.Start(answers);
            var read = BudgetJob.Read(job);
            Assert.NotNull(read);
            Assert.Empty(JobEditing.Between(job, BudgetJob.Make(read, job), "again", "").Changes);
        },
        iter: 60);

    [Fact]
    public void Start_AnyAnswers_IsAJobThatAFileMayHold() => Answers.Sample(
        answers =>
        {
            var reading = JobFile.Read(JobFile.Write(BudgetJob.Start(answers)), "budget.json");
            Assert.True(reading.Ok, string.Join('\n', reading.Problems));
        },
        iter: 60);

    [Fact]
    public void Read_JobWorkedOnElsewhere_Null()
    {
        var job = BudgetJob.Start(new BudgetAnswers().Add(RoomKind.Family, "Family room"));

        Assert.Null(BudgetJob.Read(RoomActs.Add(job, "R1", DeviceKind.WallLight)));
        Assert.Null(BudgetJob.Read(JobStarts.Sample("basement-finish")));
    }

    [Theory]
    [InlineData(DeviceKind.RecessedLight, 12)] // 20 x 15 ft at a light for each 25 sq ft (common practice, no source)
    [InlineData(DeviceKind.CeilingLight, 0)]
    [InlineData(DeviceKind.Dimmer, 1)]
    [InlineData(DeviceKind.SinglePoleSwitch, 0)]
    public void Make_RecessedLights_TakeThePlaceOfCeilingLightAndSwitch(DeviceKind kind, int count)
    {
        var answers = new BudgetAnswers().Add(RoomKind.Family, "Family room").With("R1", r => r with { RecessedLights = true });

        Assert.Equal(count, RoomActs.Count(BudgetJob.Start(answers).Levels[0].Rooms[0], kind));
    }

    [Fact]
    public void Make_Basement_LeastReceptaclesByWallSpace()
    {
        // NEC 210.52(A)(1): no point along the wall more than 6 ft from a receptacle, so one for each 12 ft of the 70 ft round a 20 x 15 ft room.
        var room = BudgetJob.Start(new BudgetAnswers().Add(RoomKind.Family, "Family room")).Levels[0].Rooms[0];

        Assert.Equal(6, RoomActs.Count(room, DeviceKind.DuplexReceptacle));
    }

    [Fact]
    public void Make_OwnerWorks_LaborCostsNothing()
    {
        var answers = new BudgetAnswers { Worker = BudgetWorker.Owner }.Add(RoomKind.Bedroom, "Bedroom");

        var bid = JobEstimate.Compute(BudgetJob.Start(answers), CatalogueShelf.BuiltIn().Parts).Bid;

        Assert.Equal(0, bid.DirectCost.Single(l => l.Id == "labor").Amount.Value);
    }

    [Fact]
    public void Make_FirmNamesARate_AnHourCostsJustThat()
    {
        var answers = new BudgetAnswers { HourRate = 95.5m }.Add(RoomKind.Bedroom, "Bedroom");

        var estimate = JobEstimate.Compute(BudgetJob.Start(answers), CatalogueShelf.BuiltIn().Parts);

        Assert.Equal(95.5m, estimate.Bid.HourCost.Value);
        Assert.Equal(95.5m, BudgetJob.Read(BudgetJob.Start(answers))!.HourRate);
    }

    [Fact]
    public void Make_PanelNotSeen_WidensTheRangeUpwards()
    {
        var seen = new BudgetAnswers { Panel = new BudgetPanel { Seen = true } }.Add(RoomKind.Bedroom, "Bedroom");
        decimal Up(BudgetAnswers answers) => JobEstimate.Compute(BudgetJob.Start(answers), CatalogueShelf.BuiltIn().Parts).Bid is var bid ? bid.High.Value - bid.Price.Value : 0;

        Assert.True(Up(seen with { Panel = new BudgetPanel() }) > Up(seen));
    }
}
