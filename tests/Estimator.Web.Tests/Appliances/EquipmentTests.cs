using Bunit;
using Estimator.Engine.House;
using Estimator.Web.Appliances;
using Estimator.Web.Tests.Entries;

namespace Estimator.Web.Tests.Appliances;

public sealed class EquipmentTests : WebContext
{
    private const string Add = "Add equipment: type what it is";

    public static TheoryData<string, object, Func<Equipment, string>, string> Statements => new()
    {
        { "What, Clothes dryer", nameof(EquipmentKind.Oven), e => $"{e.Kind}", "Oven" },
        { "Name, Clothes dryer", "Dryer upstairs", e => e.Name, "Dryer upstairs" },
        { "Room, Clothes dryer", "bath", e => e.Room, "bath" },
        { "Volts, Clothes dryer", "240 V", e => $"{e.Volts}", "240" },
        { "Load, Clothes dryer", "5.6 kW", e => $"{e.LoadVa}", "5600 VA" },
        { "Minimum circuit ampacity, Clothes dryer", "24.9", e => $"{e.MinimumCircuitAmpacityA}", "24.9 A" },
        { "Maximum overcurrent device, Clothes dryer", "40 A", e => $"{e.MaximumOvercurrentDeviceA}", "40 A" },
        { "Meets its circuit by, Clothes dryer", nameof(Connection.HardWired), e => $"{e.Connection}", "HardWired" },
        { "Own circuit, Clothes dryer", "no", e => $"{e.OwnCircuit}", "False" },
        { "Burns fuel, Clothes dryer", true, e => $"{e.BurnsFuel}", "True" },
        { "Owner supplies, Clothes dryer", false, e => $"{e.OwnerSupplied}", "False" },
        { "Cut off by, Clothes dryer", nameof(DisconnectPlace.Lockable), e => $"{e.Disconnect}", "Lockable" },
        { "Inverter unit, Clothes dryer", true, e => $"{e.Inverter}", "True" },
        { "There already and wired, Clothes dryer", true, e => $"{e.Existing}", "True" },
    };

    [Theory]
    [MemberData(nameof(Statements))]
    public async Task Field_OfAPiece_ReachesTheJobAndIsUndone(string label, object typed, Func<Equipment, string> read, string expected)
    {
        var part = await WithDryerAsync();
        var before = read(Desk.Job.Equipment[0]);

        await EntryFields.StateAsync(part, label, typed);

        Assert.Equal(expected, read(Desk.Job.Equipment[0]));
        await Desk.UndoAsync();
        Assert.Equal(before, read(Desk.Job.Equipment[0]));
    }

    [Theory]
    [InlineData("Volts, Clothes dryer", "277", "Found 277; accepted is 120 or 240.")]
    [InlineData("Load, Clothes dryer", "300,000", "0 to 200000 volt-amperes")]
    [InlineData("Load, Clothes dryer", "-4", "a number of volt-amperes")]
    [InlineData("Load, Clothes dryer", "much", "4.5 kVA")]
    [InlineData("Minimum circuit ampacity, Clothes dryer", "900", "1 to 600 amperes")]
    [InlineData("Maximum overcurrent device, Clothes dryer", "0", "15 to 600 amperes")]
    public async Task Field_WrongEntry_SaidThereAndNothingChanged(string label, string typed, string said)
    {
        var part = await WithDryerAsync();
        var before = Desk.Version;

        await EntryFields.StateAsync(part, label, typed);

        Assert.Contains(said, part.Find(".wrong").TextContent, StringComparison.Ordinal);
        Assert.Equal((typed, "true"), (EntryFields.Field(part, label).GetAttribute("value"), EntryFields.Field(part, label).GetAttribute("aria-invalid")));
        Assert.Equal(before, Desk.Version);
    }

    [Theory]
    [InlineData("dry", EquipmentKind.Dryer, "Clothes dryer")]
    [InlineData("EV", EquipmentKind.EvCharger, "Electric vehicle charger")]
    [InlineData("ac", EquipmentKind.AirConditioner, "Air conditioner")]
    [InlineData("Hot tub", EquipmentKind.Other, "Hot tub")]
    public async Task Add_AWord_AddsThePieceThatItMeans(string typed, EquipmentKind kind, string name)
    {
        await OpenSampleAsync();
        var part = Render<EquipmentPart>();

        await EntryFields.StateAsync(part, Add, typed);

        var piece = Assert.Single(Desk.Job.Equipment);
        Assert.Equal((kind, name), (piece.Kind, piece.Name));
        Assert.Equal("", EntryFields.Field(part, Add).GetAttribute("value"));
    }

    [Fact]
    public async Task Add_AWordOfTwoKinds_AsksWhichOne()
    {
        await OpenSampleAsync();
        var part = Render<EquipmentPart>();

        await EntryFields.StateAsync(part, Add, "heat");

        Assert.Contains("Water heater, Heat pump, Fixed electric heat", part.Find(".wrong").TextContent, StringComparison.Ordinal);
        Assert.Empty(Desk.Job.Equipment);
    }

    [Fact]
    public async Task Breaker_OfAPieceWithANameplate_IsTheWirings()
    {
        var part = await WithDryerAsync();
        await EntryFields.StateAsync(part, "Maximum overcurrent device, Clothes dryer", "40");
        await EntryFields.StateAsync(part, "Minimum circuit ampacity, Clothes dryer", "24.9");
        var priced = await PricedAsync();

        var breaker = priced.Estimate.Wiring.Circuits.Single(c => c.Poles == 2).BreakerA.Value;

        part.WaitForAssertion(() => Assert.StartsWith($"{breaker:0}", part.Find("[data-n]").TextContent.Trim(), StringComparison.Ordinal));
    }

    [Fact]
    public async Task Remove_APiece_TakesItOffTheJob()
    {
        var part = await WithDryerAsync();

        await EntryFields.PressAsync(part, "Remove");

        Assert.Empty(Desk.Job.Equipment);
    }

    private async Task<IRenderedComponent<EquipmentPart>> WithDryerAsync()
    {
        var priced = await OpenSampleAsync();
        await Desk.EditAsync("Dryer", j => EquipmentActs.Add(j, "dryer", EquipmentKind.Dryer, "Clothes dryer"), Token);
        await PricedAsync();
        return Render<EquipmentPart>(p => p.AddCascadingValue(priced.Source));
    }
}
