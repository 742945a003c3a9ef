using BenchmarkDotNet.Attributes;
using ClosedXML.Excel;
using Estimator.Cli;
using Estimator.Documents;
using Estimator.Documents.Pricing;
using Estimator.Engine;
using Estimator.Engine.JobFiles;
using Estimator.TestKit;

namespace Estimator.Benchmarks;

/// <summary>The bid workbook of an estimate. The reference is ClosedXML writing the same values, formulas and number formats into the same cells and nothing else.</summary>
public class WorkbookBenchmarks
{
    private readonly List<(string Sheet, List<Cell> Cells)> _sheets = [];
    private JobEstimate _estimate = null!;

    [ParamsSource(nameof(Names))]
    public string Name { get; set; } = "";

    public static IEnumerable<string> Names => Samples.Names;

    [GlobalSetup]
    public void Estimate()
    {
        _estimate = JobEstimate.Compute(JobFile.Read(Samples.Read(Name), Name).Job!, Catalogues.Shipped);
        using var stream = new MemoryStream(BidWorkbook.Write(_estimate, new Letterhead()));
        using var workbook = new XLWorkbook(stream);
        foreach (var sheet in workbook.Worksheets)
        {
            _sheets.Add((sheet.Name, [.. sheet.CellsUsed().Select(c => new Cell(
                c.Address.RowNumber, c.Address.ColumnNumber, c.HasFormula ? c.FormulaA1 : null, c.HasFormula ? null : c.Value, c.Style.NumberFormat.Format))]));
        }
    }

    [Benchmark(Baseline = true)]
    public long BareLibrary()
    {
        using var workbook = new XLWorkbook();
        foreach (var (name, cells) in _sheets)
        {
            var sheet = workbook.AddWorksheet(name);
            foreach (var from in cells)
            {
                var cell = sheet.Cell(from.Row, from.Column);
                if (from.Formula is { } formula)
                {
                    cell.FormulaA1 = formula;
                }
                else
                {
                    cell.Value = from.Value;
                }

                cell.Style.NumberFormat.Format = from.Format;
            }
        }

        using var stream = new MemoryStream();
        workbook.SaveAs(stream);
        return stream.Length;
    }

    [Benchmark]
    public int BidWorkbookWritten() => BidWorkbook.Write(_estimate, new Letterhead()).Length;

    private sealed record Cell(int Row, int Column, string? Formula, object? Value, string Format);
}
