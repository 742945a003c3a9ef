using System.Globalization;
using System.Text;
using System.Text.Json;
using Estimator.Engine;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.Framing;
using Estimator.Engine.Measures;

namespace Estimator.Cli.Takeoffs;

/// <summary>Writes every stage of an estimate with its provenance: figures point into one table of nodes.</summary>
internal static class EstimateJson
{
    internal static string Write(JobEstimate estimate)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("schema", "estimator-takeoff/1");
            json.WriteString("job", estimate.House.Job.Id);
            json.WriteString("engine_hash", EngineHash.Value);
            Layout(json, estimate);
            Wiring(json, estimate);
            Quantities(json, estimate);
            BidAndLoads(json, estimate);
            List(json, "findings", estimate.Findings, Finding);
            Nodes(json, estimate.Book);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void Layout(Utf8JsonWriter json, JobEstimate estimate)
    {
        List(json, "rooms", estimate.House.Rooms, (w, r) =>
        {
            w.WriteString("id", r.Source.Id);
            Figure(w, "area_sqft", r.AreaSquareFeet);
            Figure(w, "ceiling_height", r.CeilingHeight);
        });
        List(json, "devices", estimate.Layout.Devices, (w, d) =>
        {
            w.WriteString("id", d.Id);
            w.WriteString("kind", d.Kind.ToString());
            Place(w, estimate, d.Place);
        });
        List(json, "controls", estimate.Controls.Groups, (w, g) =>
        {
            w.WriteString("id", g.Id);
            Strings(w, "switches", g.Switches.Select(s => estimate.Layout.Devices[s].Id));
            Strings(w, "loads", g.Loads.Select(l => $"{estimate.Layout.Devices[l.Device].Id}{(l.Part is Engine.Controls.LoadPart.Whole ? "" : $"#{l.Part}")}"));
        });
    }

    private static void Wiring(Utf8JsonWriter json, JobEstimate estimate)
    {
        List(json, "circuits", estimate.Wiring.Circuits, (w, c) =>
        {
            w.WriteString("id", c.Id);
            w.WriteString("name", c.Name);
            w.WriteString("panel", estimate.Layout.Panels[c.Panel].Source.Id);
            w.WriteString("kind", c.Kind.ToString());
            Figure(w, "breaker_a", c.BreakerA);
            w.WriteNumber("poles", c.Poles);
            if (c.SharesNeutralWith is { } other)
            {
                w.WriteString("shares_neutral_with", estimate.Wiring.Circuits[other].Id);
            }

            w.WriteString("protection", c.Protection.ToString());
            w.WriteBoolean("first_receptacle_protects", c.FirstReceptacleProtects);
            w.WriteString("wire", c.Wire.ToString());
            w.WriteNumber("outlets", c.Outlets);
            Figure(w, "load_va", c.LoadVa);
            Figure(w, "voltage_drop_percent", c.VoltageDropPercent);
            Strings(w, "boxes", c.Boxes.Select(b => estimate.Wiring.Boxes[b].Id));
        });
        List(json, "runs", estimate.Wiring.Runs, (w, r) =>
        {
            w.WriteString("id", r.Id);
            w.WriteString("from", r.From < 0 ? estimate.Layout.Panels[estimate.Wiring.Circuits[r.Circuit].Panel].Source.Id : estimate.Wiring.Boxes[r.From].Id);
            w.WriteString("to", estimate.Wiring.Boxes[r.To].Id);
            w.WriteString("role", r.Role.ToString());
            w.WriteString("cable", r.Cable.TradeName);
            w.WriteString("way", r.Path.Way.ToString());
            Figure(w, "horizontal", r.Path.Horizontal);
            Figure(w, "vertical", r.Path.Vertical);
            Figure(w, "make_up", r.MakeUp);
            Figure(w, "slack", r.Slack);
            Figure(w, "total", r.Total);
        });
        List(json, "boxes", estimate.Wiring.Boxes, (w, b) =>
        {
            w.WriteString("id", b.Id);
            w.WriteString("circuit", estimate.Wiring.Circuits[b.Circuit].Id);
            w.WriteString("item", b.Item?.ItemId);
            w.WriteNumber("gangs", b.Gangs);
            Figure(w, "required_volume_in3", b.RequiredVolume);
            w.WriteBoolean("fits", b.Fits);
            w.WriteNumber("cables", b.CableEntries);
        });
    }

    private static void Quantities(Utf8JsonWriter json, JobEstimate estimate)
    {
        List(json, "takeoff", estimate.Takeoff.Lines, (w, l) =>
        {
            w.WriteString("item", l.ItemId);
            w.WriteString("description", l.Description);
            w.WriteString("unit", l.Unit);
            Figure(w, "quantity", l.Quantity);
            w.WriteBoolean("owner_supplied", l.OwnerSupplied);
        });
        List(json, "purchase", estimate.Purchase.Lines, (w, l) =>
        {
            w.WriteString("item", l.ItemId);
            Strings(w, "packs", l.Packs.Select(p => $"{p.Count} x {p.Offer.PackSize}"));
            if (l.Cost is { } cost)
            {
                Figure(w, "cost_usd", new Fact(cost.Value.ToDollars(), Unit.Dollars, cost.Node));
            }
        });
        List(json, "labor", estimate.Labor.Lines, (w, l) =>
        {
            w.WriteString("item", l.ItemId);
            w.WriteString("phase", l.Phase.ToString());
            Figure(w, "hours", l.Hours);
            w.WriteString("basis", l.Basis);
        });
    }

    private static void BidAndLoads(Utf8JsonWriter json, JobEstimate estimate)
    {
        List(json, "bid", estimate.Bid.DirectCost.Concat(estimate.Bid.Additions), (w, l) =>
        {
            w.WriteString("id", l.Id);
            w.WriteString("label", l.Label);
            Figure(w, "amount_usd", l.Amount);
        });
        json.WriteStartObject("price");
        Figure(json, "low_usd", estimate.Bid.Low);
        Figure(json, "likely_usd", estimate.Bid.Price);
        Figure(json, "high_usd", estimate.Bid.High);
        Figure(json, "middle_usd", estimate.Bid.Range.Middle);
        Figure(json, "within_price_percent", estimate.Bid.Range.WithinPrice);
        Strings(json, "inclusions", estimate.Bid.Inclusions);
        Strings(json, "exclusions", estimate.Bid.Exclusions);
        Strings(json, "assumptions", estimate.Bid.Assumptions);
        json.WriteEndObject();
        List(json, "range_factors", estimate.Bid.Range.Factors, (w, f) =>
        {
            w.WriteString("key", f.Key);
            w.WriteString("label", f.Label);
            Figure(w, "share_percent", f.Share);
            Figure(w, "less_usd", f.Less);
            Figure(w, "more_usd", f.More);
        });
        List(json, "range_draws", estimate.Bid.Range.Bins, (w, b) =>
        {
            w.WriteNumber("from_usd", b.From);
            w.WriteNumber("to_usd", b.To);
            w.WriteNumber("draws", b.Draws);
        });
        List(json, "loads", estimate.Loads.Sheets, (w, s) =>
        {
            w.WriteString("method", s.Method);
            w.WriteString("article", s.Article);
            List(w, "lines", s.Lines, (v, l) =>
            {
                v.WriteString("id", l.Id);
                v.WriteString("label", l.Label);
                Figure(v, "value", l.Value);
            });
        });
    }

    private static void Finding(Utf8JsonWriter json, Finding finding)
    {
        json.WriteString("code", finding.Code);
        json.WriteString("severity", finding.Severity.ToString());
        json.WriteString("text", finding.Text);
        json.WriteString("article", finding.Article);
        json.WriteString("edition", finding.Edition);
        json.WriteBoolean("verified", finding.Verified);
        Strings(json, "where", finding.Where);
    }

    private static void Nodes(Utf8JsonWriter json, ExplanationBook book) => List(json, "nodes", book.Pages.SelectMany(p => Enumerable.Range(0, p.Count).Select(i => p[i])), (w, n) =>
    {
        w.WriteString("node", Name(n.Ref));
        w.WriteString("operation", n.Operation.ToString());
        w.WriteString("rule", n.Rule);
        w.WriteString("label", n.Label);
        w.WriteNumber("value", n.Value);
        w.WriteString("unit", n.Unit.ToString());
        Strings(w, "inputs", n.Inputs.Select(Name));
    });

    private static void Place(Utf8JsonWriter json, JobEstimate estimate, Placement place)
    {
        json.WriteString("room", estimate.House.Rooms[place.Room].Source.Id);
        json.WriteString("mount", place.Mount.ToString());
        Figure(json, "x", place.X);
        Figure(json, "y", place.Y);
        Figure(json, "height", place.HeightFact);
        json.WriteBoolean("assumed", place.Assumed);
    }

    // Lengths are written in inches, which the name of the field cannot say for every figure: the unit stands beside.
    private static void Figure(Utf8JsonWriter json, string name, Fact fact)
    {
        json.WriteStartObject(name);
        json.WriteNumber("value", fact.Unit is Unit.Length ? Length.FromNanometres(decimal.ToInt64(decimal.Round(fact.Value, 0, MidpointRounding.AwayFromZero))).ToInches() : fact.Value);
        json.WriteString("unit", fact.Unit is Unit.Length ? "in" : fact.Unit.ToString());
        json.WriteString("node", Name(fact.Node));
        json.WriteEndObject();
    }

    private static string Name(NodeRef node) => string.Create(CultureInfo.InvariantCulture, $"{node.Page}.{node.Index}");

    private static void Strings(Utf8JsonWriter json, string name, IEnumerable<string> values)
    {
        json.WriteStartArray(name);
        foreach (var value in values)
        {
            json.WriteStringValue(value);
        }

        json.WriteEndArray();
    }

    private static void List<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(json, item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
