using System.Diagnostics;
using System.Globalization;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using Estimator.Data;
using Estimator.Data.Databases;
using Estimator.Data.Suppliers;
using Estimator.Documents.Prices;
using Estimator.Engine.Purchase.PriceFiles;
using Estimator.TestKit;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Benchmarks;

/// <summary>What a price file of many rows takes, from the file to the database: memory of a process of its own, and time as a ratio to copying the file's lines.</summary>
internal static class PriceFileMeasuring
{
    private const string Child = "one";
    private const double Megabyte = 1 << 20;

    /// <summary>Makes files and measures each in a process of its own.</summary>
    /// <param name="arguments">Number of rows; or, in the process of its own, the file and its folder.</param>
    internal static async Task<int> RunAsync(string[] arguments)
    {
        if (arguments is [Child, var file, var folder])
        {
            await ReadAsync(file, folder);
            return 0;
        }

        var rows = arguments is [var count] ? int.Parse(count, CultureInfo.InvariantCulture) : 50_000;
        var place = Directory.CreateTempSubdirectory("prices").FullName;
        try
        {
            foreach (var path in new[] { Csv(place, rows), Workbook(place, rows) })
            {
                using var child = Process.Start(new ProcessStartInfo("dotnet", [typeof(PriceFileMeasuring).Assembly.Location, "prices", Child, path, place]) { UseShellExecute = false })!;
                await child.WaitForExitAsync();
            }
        }
        finally
        {
            Directory.Delete(place, recursive: true);
        }

        return 0;
    }

    private static async Task ReadAsync(string path, string folder)
    {
        var lines = Stopwatch.StartNew();
        var read = PriceFile.Rows(path).Sum(r => r.Cells.Length);
        lines.Stop();
        var all = Stopwatch.StartNew();
        var head = PriceFileHead.Read(path);
        var rows = PriceFileRows.Read(path, head, head.Start(ColumnMatching.None));
        var preview = PricePreview.Of(rows.Rows, ItemLinks.None, [], Catalogues.Shipped);
        var looked = all.Elapsed;
        var kept = Environment.WorkingSet;
        await using var services = new ServiceCollection().AddEstimatorData(DatabaseAddress.Sqlite(System.IO.Path.Combine(folder, $"{System.IO.Path.GetFileName(path)}.db"))).BuildServiceProvider();
        await services.GetRequiredService<DatabaseStart>().RunAsync();
        var supplier = (await services.GetRequiredService<SupplierStore>().SaveAsync(new Supplier { Name = "Counter" })).Stored;
        var written = await services.GetRequiredService<SupplierPriceStore>().WriteAsync(new NewPrices(supplier.Id, 0, path, "", "measuring", new DateOnly(2026, 3, 2), head.Start(ColumnMatching.None), preview.Changes));
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{System.IO.Path.GetExtension(path)}: {rows.Rows.Length} rows read ({read} cells), {preview.Changes.Length} prices, {written?.Prices} written; looking through takes {looked / lines.Elapsed:0.0} times reading the cells, writing {(all.Elapsed - looked) / lines.Elapsed:0.0}; working set {kept / Megabyte:0} MB after looking, peak {Process.GetCurrentProcess().PeakWorkingSet64 / Megabyte:0} MB"));
    }

    private static IEnumerable<string[]> Rows(int count) => Enumerable.Range(0, count).Select(i =>
    {
        var item = Catalogues.Shipped.Items[i % Catalogues.Shipped.Items.Length];
        return (string[])[$"N-{i}", item.Id, $"{item.Description}, pack {i}", string.Create(CultureInfo.InvariantCulture, $"{100 + (i % 900)}.5"), "M", string.Create(CultureInfo.InvariantCulture, $"{1 + (i / Catalogues.Shipped.Items.Length)}"), "2026-03-02"];
    }).Prepend(["Part No", "Our item", "Description", "Net price", "UOM", "Pack", "Price date"]);

    private static string Csv(string folder, int rows)
    {
        var path = System.IO.Path.Combine(folder, "prices.csv");
        File.WriteAllLines(path, Rows(rows).Select(cells => string.Join(',', cells.Select(c => $"\"{c}\""))));
        return path;
    }

    private static string Workbook(string folder, int rows)
    {
        var path = System.IO.Path.Combine(folder, "prices.xlsx");
        using var document = SpreadsheetDocument.Create(path, SpreadsheetDocumentType.Workbook);
        var book = document.AddWorkbookPart();
        var sheet = book.AddNewPart<WorksheetPart>();
        using (var writer = OpenXmlWriter.Create(sheet))
        {
            writer.WriteStartElement(new Worksheet());
            writer.WriteStartElement(new SheetData());
            foreach (var cells in Rows(rows))
            {
                writer.WriteStartElement(new Row());
                foreach (var cell in cells)
                {
                    writer.WriteElement(new Cell { DataType = CellValues.InlineString, InlineString = new InlineString(new Text(cell)) });
                }

                writer.WriteEndElement();
            }

            writer.WriteEndElement();
            writer.WriteEndElement();
        }

        book.Workbook = new Workbook(new Sheets(new Sheet { Name = "Prices", SheetId = 1, Id = book.GetIdOfPart(sheet) }));
        return path;
    }
}
