using System.Collections.Immutable;
using ClosedXML.Excel;
using Estimator.Documents.Budget;
using Estimator.Documents.Crew;
using Estimator.Documents.Orders;
using Estimator.Documents.Permit;
using Estimator.Documents.Pricing;
using Estimator.Documents.Purchase;
using Estimator.Documents.Tests.Orders;
using Estimator.Documents.Tests.Workbooks;
using Estimator.Engine;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

[assembly: AssemblyFixture(typeof(Estimator.Documents.Tests.RecalculatedBooks))]

namespace Estimator.Documents.Tests;

/// <summary>All workbooks that are recalculated, made and recalculated once for all tests.</summary>
public sealed class RecalculatedBooks
{
    private const decimal Wage = 41.17m;
    private const decimal OverheadPercent = 27.5m;
    private const decimal AlarmPrice = 40.35m;
    private const decimal DryerVa = 6100m;
    private const decimal ChargerVa = 11520m;

    private readonly Dictionary<string, byte[]> _books = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Book, string Sheet), List<string[]>> _cells;

    /// <summary>A price of a pack that somebody types into the purchase list, in dollars.</summary>
    internal const decimal TypedPrice = 123.45m;

    public RecalculatedBooks()
    {
        Bid("basement", SampleEstimates.Basement);
        Bid("house", SampleEstimates.House);
        Bid("service", SampleEstimates.Service);
        Changed("basement", SampleEstimates.Basement);
        Changed("house", SampleEstimates.House);
        foreach (var (name, text) in HostileTexts.All)
        {
            var estimate = HostileTexts.Estimate(text);
            _books[$"bid_{name}"] = BidWorkbook.Write(estimate, HostileTexts.Letterhead(text));
            _books[$"customer_{name}"] = CustomerWorkbook.Write(estimate, HostileTexts.Letterhead(text));
            _books[$"budget_{name}"] = BudgetWorkbook.Write(estimate, HostileTexts.Letterhead(text));
            _books[$"crew_{name}"] = CrewWorkbook.Write(estimate, HostileTexts.Letterhead(text));
            _books[$"permit_{name}"] = PermitWorkbook.Write(estimate, HostileTexts.Letterhead(text));
            _books[$"buy_{name}"] = PurchaseWorkbook.Write(estimate.Purchase, [estimate], HostileTexts.Letterhead(text));
        }

        foreach (var seed in Seeds)
        {
            Bid($"random_{seed}", RandomBid(seed));
        }

        _books["customer"] = CustomerWorkbook.Write(SampleEstimates.House, Letterhead.Blank);
        _books["budget"] = BudgetWorkbook.Write(SampleEstimates.Basement, Letterhead.Blank);
        _books["budget_changed"] = BookCells.Changed(_books["budget"], AlarmPriced);
        foreach (var (name, estimate) in (IEnumerable<(string, JobEstimate)>)[("basement", SampleEstimates.Basement), ("house", SampleEstimates.House), ("service", SampleEstimates.Service)])
        {
            _books[$"crew_{name}"] = CrewWorkbook.Write(estimate, Letterhead.Blank);
            _books[$"permit_{name}"] = PermitWorkbook.Write(estimate, Letterhead.Blank);
            Expected[$"crew_{name}"] = Expected[$"permit_{name}"] = estimate;
        }

        foreach (var number in HouseNumbers)
        {
            var estimate = SmallJobs.Estimate(HouseGen.Number(number));
            _books[$"crew_random_{number}"] = CrewWorkbook.Write(estimate, Letterhead.Blank);
            _books[$"permit_random_{number}"] = PermitWorkbook.Write(estimate, Letterhead.Blank);
            _books[$"budget_random_{number}"] = BudgetWorkbook.Write(estimate, Letterhead.Blank);
            _books[$"buy_random_{number}"] = PurchaseWorkbook.Write(estimate.Purchase, [estimate], Letterhead.Blank);
            Expected[$"crew_random_{number}"] = Expected[$"permit_random_{number}"] = estimate;
        }

        Rewired();
        Buy("order", [SampleEstimates.Basement]);
        Buy("orders", [SampleEstimates.Basement, SampleEstimates.House]);
        _books["order_changed"] = BookCells.Changed(_books["order"], book => FirstPack(book).CellRight(4).Value = TypedPrice);
        _books["po_placed"] = PurchaseOrderWorkbook.Write(SampleOrders.Placed, Letterhead.Blank);
        _books["po_happened"] = PurchaseOrderWorkbook.Write(SampleOrders.Happened, Letterhead.Blank);
        foreach (var seed in SampleOrders.Seeds)
        {
            _books[$"po_random_{seed}"] = PurchaseOrderWorkbook.Write(SampleOrders.Random(seed), Letterhead.Blank);
        }

        _books["po_changed"] = BookCells.Changed(_books["po_placed"], book => book.Worksheet("Order").Cell(10, 4).Value = 2);
        foreach (var (name, text) in HostileTexts.All)
        {
            _books[$"po_{name}"] = PurchaseOrderWorkbook.Write(SampleOrders.Hostile(text), HostileTexts.Letterhead(text));
        }

        _cells = LibreOffice.Recalculate(_books);
    }

    public static ImmutableArray<int> Seeds { get; } = [.. Enumerable.Range(1, 16)];

    /// <summary>Numbers of the random houses whose sheets are recalculated.</summary>
    public static ImmutableArray<int> HouseNumbers { get; } = [3, 7, 11];

    public IEnumerable<string> Names => _books.Keys;

    /// <summary>What the engine answers for each bid.</summary>
    public Dictionary<string, JobEstimate> Expected { get; } = new(StringComparer.Ordinal);

    public byte[] this[string book] => _books[book];

    /// <summary>A cell as the other program shows it after recalculating.</summary>
    public string Cell(string book, string sheet, int row, int column)
    {
        var rows = _cells[(book, sheet)];
        return row <= rows.Count && column <= rows[row - 1].Length ? rows[row - 1][column - 1] : "";
    }

    /// <summary>The rows of a sheet.</summary>
    public IEnumerable<int> Rows(string book, string sheet) => Enumerable.Range(1, _cells[(book, sheet)].Count);

    public decimal Number(string book, string sheet, int row, int column) => BookCells.Number(Cell(book, sheet, row, column));

    /// <summary>Every cell of a book after recalculating.</summary>
    public IEnumerable<string> Cells(string book) => _cells.Where(c => c.Key.Book == book).SelectMany(c => c.Value).SelectMany(r => r);

    private void Bid(string name, JobEstimate estimate)
    {
        Expected[name] = estimate;
        _books[name] = BidWorkbook.Write(estimate, Letterhead.Blank);
    }

    private void Buy(string name, JobEstimate[] jobs)
    {
        var plan = Engine.Purchase.Buying.Together([.. jobs.Select(e => (e.House.Job.Id, e.Takeoff))], Catalogues.Shipped);
        _books[name] = PurchaseWorkbook.Write(plan, jobs, Letterhead.Blank);
    }

    // A wage, a markup and a price: typed into the sheet on one side, given to the engine on the other.
    private void Changed(string name, JobEstimate estimate)
    {
        _books[$"{name}_changed"] = BookCells.Changed(_books[name], book =>
        {
            book.Named("ElectricianWage").Value = Wage;
            book.Named("Overhead").Value = OverheadPercent;
            AlarmPriced(book);
        });
        var job = estimate.House.Job;
        var changed = job with { Bid = job.Bid with { ElectricianWage = Money.FromDollars(Wage), OverheadPercent = Percent.FromHundredths(OverheadPercent) } };
        Expected[$"{name}_changed"] = JobEstimate.Compute(changed, SampleEstimates.CatalogueWithPrice("smoke-co-alarm", "sample-a", 1, AlarmPrice));
    }

    // Nameplates and a length: typed into the sheets on one side, given to the engine on the other.
    private void Rewired()
    {
        _books["permit_house_changed"] = BookCells.Changed(_books["permit_house"], book =>
        {
            var sheet = book.Worksheet("Loads");
            int Row(string label) => sheet.Column(1).CellsUsed().First(c => c.GetString() == label).Address.RowNumber;
            sheet.Cell(Row("Dryer"), 3).Value = DryerVa;
            sheet.Cell(Row("EV charger"), 3).Value = ChargerVa;
        });
        var job = SampleEstimates.House.House.Job;
        Equipment Changed(Equipment e) => e.Kind is EquipmentKind.Dryer ? e with { LoadVa = Power.FromVoltAmperes(DryerVa) } : e.Kind is EquipmentKind.EvCharger ? e with { LoadVa = Power.FromVoltAmperes(ChargerVa) } : e;
        Expected["permit_house_changed"] = JobEstimate.Compute(job with { Equipment = [.. job.Equipment.Select(Changed)] }, Catalogues.Shipped);
        _books["crew_house_changed"] = BookCells.Changed(_books["crew_house"], book => book.Worksheet("Pull list").Cell(5, 7).Value = 100m);
    }

    private static void AlarmPriced(IXLWorkbook book)
    {
        var takeoff = book.Worksheet("Takeoff");
        var row = takeoff.Column(1).CellsUsed().Single(c => c.GetString() == "Smoke and carbon monoxide alarm, wired and interconnected").Address.RowNumber;
        takeoff.Cell(row, 8).Value = AlarmPrice;
    }

    /// <summary>A bid whose rates are drawn at random; the same seed, the same bid.</summary>
    internal static JobEstimate RandomBid(int seed)
    {
        var random = new Random(seed);
        Money Dollars(int most) => Money.FromDollars(random.Next(most * 100) / 100m);
        Percent Share(int most) => Percent.FromHundredths(random.Next(most * 100) / 100m);
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, random.Next(1, 9)), (DeviceKind.CeilingLight, random.Next(1, 4)), (DeviceKind.SinglePoleSwitch, 1));
        return SmallJobs.Estimate(job with
        {
            Practice = job.Practice with { Occupied = random.Next(2) == 1 },
            Unknowns = [new Unknown { Id = "U1", Topic = UnknownTopic.Other, Text = "something", Allowance = Dollars(500) }],
            Bid = new BidSettings
            {
                ElectricianWage = Dollars(90),
                HelperWage = Dollars(60),
                HelpersPerElectrician = random.Next(0, 5) / 2m,
                BurdenPercent = Share(90),
                ProductivePercent = Percent.FromHundredths(random.Next(40, 101)),
                MaterialTaxPercent = Share(12),
                Permit = Dollars(400),
                SalesTaxOn = (seed % 3) switch { 0 => null, 1 => SalesTaxOn.MaterialCharged, _ => SalesTaxOn.WholePrice },
                Fees = seed % 2 == 0 ? Dollars(300) : null,
                Allowances = seed % 4 == 0 ? [] : [new Allowance { Id = "A1", Text = "luminaires", Amount = Dollars(900) }],
                Subcontract = Dollars(900),
                EquipmentHire = Dollars(90),
                OverheadPercent = Share(60),
                ContingencyPercent = Share(15),
                ProfitPercent = Share(60),
                ProfitBasis = random.Next(2) == 1 ? ProfitBasis.Margin : ProfitBasis.Markup,
                RoundPriceTo = Money.FromDollars(new[] { 0m, 0.05m, 1m, 5m, 25m, 100m }[seed % 6]),
            },
        });
    }

    /// <summary>The box to tick of the first pack of a purchase list.</summary>
    internal static IXLCell FirstPack(XLWorkbook book) => book.Worksheet("Order").Column(1).CellsUsed().First(c => c.GetString() == "☐");
}
