using System.Collections.Immutable;
using System.Reflection;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Bunit;
using Estimator.Data.Companies;
using Estimator.Data.Jobs;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.Web.Budget;
using Estimator.Web.Jobs;
using Estimator.Web.Revisions;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Web.Tests.Entries;

/// <summary>Every field of every page that has an address, found by walking them: whatever is typed, the page stands and the text stays a text.</summary>
public sealed class TextMatrixTests : WebContext
{
    private const int LeastFields = 90;
    private const int MostFields = 600;
    private const string Fields = "input:not([type=checkbox]):not([type=radio]):not([type=file]), textarea";

    private static readonly ImmutableArray<(string Address, Type Page)> Pages =
    [
        .. typeof(JobsPage).Assembly.GetTypes().SelectMany(t => t.GetCustomAttributes<RouteAttribute>().Select(r => (r.Template, t))).OrderBy(p => p.Template, StringComparer.Ordinal),
    ];

    public static TheoryData<string> Texts =>
    [
        "\u26a1 \ud83d\ude00 \ud83d\udc69\u200d\ud83d\udd27", string.Concat(Enumerable.Repeat("ten chars ", 1000)).TrimEnd() + ".", "=1+1", "@SUM(1)", "<script>alert(1)</script><b>x</b>",
        "\u202eright to left\u202c \u200f\u05d0\u05d1\u05d2",
    ];

    [Theory]
    [MemberData(nameof(Texts))]
    public async Task Field_OfEveryPage_KeepsAnyTextAsTextOrRefusesIt(string text)
    {
        var store = Services.GetRequiredService<JobStore>();
        var job = (await store.CreateAsync(Full, JobDesk.Me, Token)).Job.Id;
        var budget = (await store.CreateAsync(BudgetJob.Start(new BudgetAnswers().Add(RoomKind.Family, "Family room")) with { Name = "Budget" }, JobDesk.Me, Token)).Job.Id;
        var found = new List<string>();
        foreach (var (address, page) in Pages)
        {
            var isBudget = address.StartsWith("/budget", StringComparison.Ordinal);
            foreach (var question in isBudget && address.Contains('{', StringComparison.Ordinal) ? Enum.GetValues<BudgetStep>().Select(s => $"?q={(int)s}") : [""])
            {
                found.AddRange(await WalkAsync(page, address, question, isBudget ? budget : job, text));
            }
        }

        Assert.True(found.Count >= LeastFields, $"only {found.Count} fields were found");
        await DocumentsStayTextAsync(job, text);
    }

    private async Task<List<string>> WalkAsync(Type type, string address, string query, string jobId, string text)
    {
        Assert.True(await Desk.OpenAsync(jobId, Token));
        await PricedAsync();
        Services.GetRequiredService<NavigationManager>().NavigateTo($"{address.Replace("{JobId}", jobId, StringComparison.Ordinal)}{query}");
        var page = Render(builder =>
        {
            builder.OpenComponent(0, type);
            if (address.Contains("{JobId}", StringComparison.Ordinal))
            {
                builder.AddComponentParameter(1, "JobId", jobId);
            }

            builder.CloseComponent();
        });
        page.WaitForState(() => page.FindAll("[aria-busy=true].waiting").Count == 0, TimeSpan.FromSeconds(30));
        await page.InvokeAsync(() => page.FindAll("button[aria-expanded=false]:not([data-n])") is [var opener, ..] ? opener.ClickAsync(new()) : Task.CompletedTask);
        var visited = new HashSet<string>(StringComparer.Ordinal);
        while (Next(page, visited) is { } field && visited.Count < MostFields)
        {
            await TypeAsync(page, field, text, $"{address}{query}: {field}");
        }

        Assert.True(visited.Count < MostFields, $"{address} grows without end");
        await page.InvokeAsync(() => page.FindAll("button").FirstOrDefault(b => b.TextContent.Trim().StartsWith("Save", StringComparison.Ordinal) && !b.HasAttribute("disabled"))?.ClickAsync(new()) ?? Task.CompletedTask);
        Stands(page, text, $"{address}{query}, saved");
        await DisposeComponentsAsync();
        return [.. visited.Select(v => $"{address}: {v}")];
    }

    // Whatever becomes of it, the page stands; and the text is in the job, or in its field, or refused in a sentence, or the field is as it was.
    private async Task TypeAsync(IRenderedComponent<IComponent> page, string field, string text, string where)
    {
        var was = Value(Find(page, field));
        await page.InvokeAsync(() => Find(page, field) is { } element
            ? element.HasAttribute("blazor:oninput") ? element.InputAsync(new ChangeEventArgs { Value = text }) : element.ChangeAsync(new ChangeEventArgs { Value = text })
            : Task.CompletedTask);
        Stands(page, text, where);
        var now = Find(page, field);
        var kept = JobFile.Write(Desk.Job).Contains(System.Text.Json.JsonEncodedText.Encode(text).ToString(), StringComparison.Ordinal) || RoomActs.All(Desk.Job).Any(r => r.Name == text);
        var said = !Desk.Problems.IsEmpty || page.FindAll("[role=alert], .mud-input-error, .wrong").Any(e => e.TextContent.Trim().Length > 0);
        Assert.True(kept || said || now is null || Value(now) == text || Value(now) == was, $"{where}: neither kept nor refused");
    }

    private static void Stands(IRenderedComponent<IComponent> page, string text, string where)
    {
        Assert.True(page.FindAll(".fault").Count == 0, $"{where}: a part could not be shown");
        Assert.True(page.FindAll("script").Count == 0 && page.FindAll("b").All(b => b.InnerHtml != "x"), $"{where}: {text} became HTML");
    }

    private async Task DocumentsStayTextAsync(string jobId, string text)
    {
        Assert.True(await Desk.OpenAsync(jobId, Token));
        Assert.NotNull(await Desk.SaveRevisionAsync(text, Token));
        foreach (var file in new[] { "bid.xlsx", "purchase.xlsx" })
        {
            using var book = new ClosedXML.Excel.XLWorkbook(new MemoryStream(await FileAsync(jobId, file)));
            var formulas = book.Worksheets.SelectMany(s => s.CellsUsed()).Where(c => c.HasFormula).Select(c => c.FormulaA1).ToList();
            Assert.NotEmpty(formulas);
            Assert.DoesNotContain(formulas, f => f == text.TrimStart('=') || f.Contains(text, StringComparison.Ordinal));
            Assert.True(file != "bid.xlsx" || book.Worksheets.SelectMany(s => s.CellsUsed(c => !c.HasFormula)).Any(c => c.GetString().Contains(text, StringComparison.Ordinal)), "the text stands in no cell");
        }

        foreach (var file in new[] { "takeoff.csv", "labor.csv", "circuits.csv", "devices.csv", "findings.csv", "cut-plan.csv" })
        {
            using var csv = new CsvHelper.CsvReader(new StringReader(System.Text.Encoding.UTF8.GetString(await FileAsync(jobId, file)).TrimStart('\uFEFF')), System.Globalization.CultureInfo.InvariantCulture);
            while (csv.Read())
            {
                Assert.DoesNotContain(csv.Parser.Record!, c => c.StartsWith('=') || c.StartsWith('@'));
            }
        }
    }

    private async Task<byte[]> FileAsync(string jobId, string file) => Assert.IsType<FileContentHttpResult>(await RevisionFiles.HandOutAsync(
        jobId, Desk.LastRevision!.Number, file, Services.GetRequiredService<JobStore>(), Services.GetRequiredService<CompanyStore>(), Services.GetRequiredService<EstimateShelf>(), Token)).FileContents.ToArray();

    private static string? Next(IRenderedComponent<IComponent> page, HashSet<string> visited) => page.FindAll(Fields).Select(Key).FirstOrDefault(visited.Add);

    private static IElement? Find(IRenderedComponent<IComponent> page, string key) => page.FindAll(Fields).FirstOrDefault(f => Key(f) == key);

    // A field is known by its id, or else by its words: both stay while its part of the page stands.
    private static string Key(IElement field) => field.Id ?? field.GetAttribute("aria-label") ?? field.Closest("label")?.TextContent ?? field.OuterHtml;

    private static string? Value(IElement? field) => field is IHtmlTextAreaElement area ? area.Value : field?.GetAttribute("value");

    // A small job that has one of everything that is stated in a field.
    private static Job Full => JobStarts.Blank("Everything") with
    {
        Equipment = [new Equipment { Id = "E1", Kind = EquipmentKind.SumpPump, Room = "R1" }],
        Unknowns = [new Unknown { Id = "U1", Topic = UnknownTopic.Other, Text = "something" }],
        Code = new CodeBasis { Edition = CodeEdition.Nec2023, Amendments = [new Amendment { Id = "A1", Kind = AmendmentKind.Add, Rule = "a rule", Text = "in words" }] },
        Panels =
        [
            JobStarts.Blank("").Panels[0] with
            {
                Existing = true, Circuits = [new ExistingCircuit { Id = "C1", Name = "There already", BreakerA = Current.FromAmperes(20) }],
            },
        ],
    };
}
