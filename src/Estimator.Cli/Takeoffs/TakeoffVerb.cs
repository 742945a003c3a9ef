using System.CommandLine;
using Estimator.Documents;
using Estimator.Documents.Papers;
using Estimator.Documents.Pricing;
using Estimator.Documents.Tables;
using Estimator.Documents.Workbooks;
using Estimator.Engine;
using Estimator.Engine.JobFiles;

namespace Estimator.Cli.Takeoffs;

/// <summary>Runs all stages and prints the takeoff and the bid.</summary>
internal static class TakeoffVerb
{
    internal static Command Create(Shell shell)
    {
        var job = JobOptions.JobPath();
        var catalogue = JobOptions.Catalogue();
        var json = new Option<string?>("--json") { Description = "Write every stage with provenance to this file." };
        var csv = new Option<string?>("--csv") { Description = "Write a table to this file: the takeoff lines, or what --table names." };
        var table = new Option<JobTable>("--table") { Description = "Which table --csv writes.", DefaultValueFactory = _ => JobTable.Takeoff };
        var workbook = JobOptions.Workbook("Write a workbook to this file: the bid workbook (customer, cost, takeoff, labor, explanations), or what --book names.");
        var book = new Option<JobWorkbook>("--book") { Description = "Which workbook --workbook writes.", DefaultValueFactory = _ => JobWorkbook.Bid };
        var pdf = new Option<string?>("--pdf") { Description = "Write a paper to this file as a PDF: the customer's bid, or what --paper names." };
        var paper = new Option<JobPaper>("--paper") { Description = "Which paper --pdf writes.", DefaultValueFactory = _ => JobPaper.Customer };
        var keep = new Option<string?>("--keep") { Description = "Write the job to this file with the catalogue that it was priced with, so that the price can be made again anywhere." };
        var command = new Command("takeoff", "Runs all stages; prints cable, boxes, devices, hours and the bid.") { job, json, csv, table, workbook, book, pdf, paper, keep, catalogue };
        command.SetAction(parsed =>
        {
            var estimate = JobOptions.Estimate(parsed.GetValue(job)!, parsed.GetValue(catalogue));
            if (parsed.GetValue(json) is { } jsonPath)
            {
                Files.Write(jsonPath, EstimateJson.Write(estimate));
            }

            if (parsed.GetValue(csv) is { } csvPath)
            {
                Files.Write(csvPath, JobTables.Write(estimate, parsed.GetValue(table), JobOptions.CatalogueOf(estimate.House.Job, parsed.GetValue(catalogue))), byteOrderMark: true);
            }

            if (parsed.GetValue(workbook) is { } workbookPath)
            {
                Files.Write(workbookPath, JobWorkbooks.Write(estimate, Letterhead.Blank, parsed.GetValue(book), parsed.GetValue(book) is JobWorkbook.Customer ? Offer(estimate, parsed.GetValue(catalogue)) : null));
            }

            if (parsed.GetValue(pdf) is { } pdfPath)
            {
                Files.Write(pdfPath, JobPapers.Write(estimate, Letterhead.Blank, parsed.GetValue(paper), parsed.GetValue(paper) is JobPaper.Customer ? Offer(estimate, parsed.GetValue(catalogue)) : null));
            }

            if (parsed.GetValue(keep) is { } keepPath)
            {
                Files.Write(keepPath, JobFile.Write(JobOptions.Kept(estimate.House.Job, parsed.GetValue(catalogue))));
            }

            TakeoffText.Write(estimate, shell.Output);
            return ExitCode.Done;
        });
        return command;
    }

    private static CustomerOffer Offer(JobEstimate estimate, string? catalogue) => CustomerOffer.Of(estimate, JobOptions.CatalogueOf(estimate.House.Job, catalogue));
}
