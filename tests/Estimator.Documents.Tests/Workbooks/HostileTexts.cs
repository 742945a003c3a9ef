using System.Collections.Immutable;
using Estimator.Engine;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Documents.Tests.Workbooks;

/// <summary>Texts that a spreadsheet could take for something else, in every text field of a job, its catalogue and its letterhead.</summary>
public static class HostileTexts
{
    public static ImmutableSortedDictionary<string, string> All { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["equals"] = "=1+1",
        ["at"] = "@SUM(A1)",
        ["plus"] = "+1",
        ["minus"] = "-1",
        ["tab"] = "a\t=1+1",
        ["emoji"] = "⚡ 😀 wiring",
        ["long"] = string.Concat(Enumerable.Repeat("ten chars ", 1000)).Trim() + ".",
        ["html"] = "<b onclick=\"alert(1)\">bold</b> & <script>x</script>",
        ["escape"] = "_x0041_ &P &D 'quoted' \"twice\"",
        ["digits"] = "007",
        ["date"] = "1-2",
        ["lines"] = "one\ntwo",
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    /// <summary>A small job of which each text is the given one.</summary>
    public static Job Job(string text)
    {
        var job = SmallJobs.OneRoom(RoomKind.Kitchen, (DeviceKind.DuplexReceptacle, 3), (DeviceKind.CeilingLight, 1), (DeviceKind.SinglePoleSwitch, 1));
        return job.With(r => r with { Name = text }) with
        {
            Name = text,
            Notes = text,
            Panels = [job.Panels[0] with { Name = text, Make = text, Series = text }],
            Equipment = [new Equipment { Id = "E1", Kind = EquipmentKind.Dishwasher, Room = "R1", Name = text }],
            Unknowns = [new Unknown { Id = "U1", Topic = UnknownTopic.Other, Text = text, Allowance = Money.FromDollars(100) }],
        };
    }

    public static JobEstimate Estimate(string text) => JobEstimate.Compute(Job(text), Catalogues.Shipped);

    public static Letterhead Letterhead(string text) => new()
    {
        Company = text,
        CompanyLines = [text, text],
        Customer = text,
        Site = text,
        Revision = text,
        PaymentTerms = text,
        IssuedOn = new DateOnly(2026, 3, 2),
    };
}
