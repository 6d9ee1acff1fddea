using System.Text.Json.Nodes;

namespace PlotAgronomy.DrawnPlans;

/// <summary>Draws what stands in few plans, and leaves out what stands in most.</summary>
internal static class FurtherDraw
{
    private const double Seldom = 0.05;

    internal static void Add(Draw draw, JsonObject plan, List<KindWord> kinds)
    {
        Report(draw, plan["soilReport"]!.AsObject());
        var materials = plan["materials"]!.AsObject();
        foreach (var lime in Rows(materials, "lime"))
        {
            Available(draw, lime);
            draw.LeaveOut(Seldom, lime, "cce");
        }

        foreach (var fertilizer in Rows(materials, "fertilizers"))
        {
            Available(draw, fertilizer);
            InJugs(draw, fertilizer);
        }

        foreach (var lot in Rows(materials, "seedLots"))
        {
            Available(draw, lot);
            Lot(draw, lot);
        }

        foreach (var blend in Rows(materials, "storeBlends"))
        {
            Available(draw, blend);
            Blend(draw, blend);
        }

        foreach (var row in Rows(plan["growing"]!.AsObject(), "kinds"))
        {
            draw.Maybe(Seldom, row, "fullRate", () => draw.Amount(4, 60, 0, "lb/ac"));
            draw.Maybe(Seldom, row, "ownEmergence", () => draw.Percent(25, 80));
        }

        var spreader = plan["spreader"]!.AsObject();
        if (draw.Chance(Seldom))
        {
            spreader["hopper"] = draw.Amount(10, 60, 0, "lb");
            draw.Maybe(0.7, spreader, "hopperOf", () => draw.Pick(kinds).Name);
        }

        foreach (var run in Rows(spreader, "measuredRuns"))
        {
            draw.LeaveOut(Seldom, run, "time");
        }

        draw.LeaveOut(Seldom, plan["methods"]!.AsObject(), "lime", "nutrients");
        draw.LeaveOut(Seldom, materials, "seedLots");
    }

    private static void Report(Draw draw, JsonObject report)
    {
        draw.Maybe(Seldom, report, "saltPh", () => draw.Number(4.2, 6.4));
        draw.Maybe(Seldom, report, "limeSinceSample", () => draw.Amount(0.3, 2, 1, "ton/ac"));
        draw.Maybe(Seldom, report, "secondBuffer", () => new JsonObject
        {
            ["name"] = draw.Pick(ReportWords.Buffers),
            ["ph"] = draw.Number(5.4, 7.6),
        });
        draw.Maybe(Seldom, report, "limeBufferCapacity", () =>
        {
            var capacity = new JsonObject { ["value"] = draw.Number(90, 600, 0) };
            draw.Maybe(0.5, capacity, "afterThirtyMinutes", () => draw.Chance(0.5));
            return capacity;
        });
        foreach (var reading in Rows(report, "readings"))
        {
            draw.LeaveOut(Seldom, reading, "extractant");
        }

        foreach (string buffer in new[] { "buffer", "secondBuffer" })
        {
            draw.LeaveOut(Seldom, report[buffer] as JsonObject, "name");
        }

        var printed = report["recommendation"] as JsonObject;
        draw.LeaveOut(Seldom, printed?["lime"] as JsonObject, "basis", "targetPh", "depth");
        draw.LeaveOut(Seldom, printed, "crop");
        draw.LeaveOut(Seldom, report, "laboratory", "sampled", "depth", "waterPh", "readings");
    }

    private static void Available(Draw draw, JsonObject offer) => draw.Maybe(Seldom, offer, "available", () => draw.Whole(0, 4));

    private static void InJugs(Draw draw, JsonObject fertilizer)
    {
        if ((string?)fertilizer["substance"] is "urea ammonium nitrate solution" or "ammonium polyphosphate" && draw.Chance(0.5))
        {
            fertilizer["package"] = "2.5 gal";
            fertilizer["density"] = draw.Amount(10.5, 11.7, 1, "lb/gal");
        }
    }

    private static void Lot(Draw draw, JsonObject lot)
    {
        switch (draw.Whole(0, 24))
        {
            case 0:
                string tag = $"{lot["kind"]}\nPure seed {lot["pureSeed"]}\nGermination {draw.Percent(60, 90)}";
                Drop(lot, "pureSeed", "germination", "tetrazolium", "hardSeed", "dormantSeed", "coating");
                lot["tag"] = tag;
                draw.LeaveOut(Seldom, lot, "kind");
                break;
            case 1:
                Drop(lot, "pureSeed", "germination", "tetrazolium", "hardSeed", "dormantSeed", "coating");
                lot["untagged"] = true;
                break;
            case 2 when lot["coating"] is null:
                lot["otherCrop"] = draw.Percent(0, 0.3);
                lot["inert"] = draw.Percent(0, 2);
                lot["weed"] = draw.Percent(0, 0.3);
                lot["noxious"] = Noxious(draw);
                break;
        }

        draw.LeaveOut(Seldom, lot, "tested");
    }

    private static void Blend(Draw draw, JsonObject blend)
    {
        draw.Maybe(0.3, blend, "lot", () => $"B-{draw.Whole(1, 99)}");
        draw.Maybe(0.2, blend, "preinoculated", () => draw.Chance(0.5));
        draw.Maybe(0.1, blend, "noxious", () => Noxious(draw));
        draw.LeaveOut(Seldom, blend, "tested");
        foreach (var kind in Rows(blend, "components"))
        {
            draw.Maybe(0.1, kind, "variety", () => "not stated on the tag");
            draw.Maybe(0.1, kind, "origin", () => draw.Pick("Oregon", "Ohio"));
        }

        if (draw.Chance(0.15))
        {
            var lines = Rows(blend, "components").Select(k => $"{k["pureSeed"]} {k["kind"]}, germination {k["germination"]}");
            blend["tag"] = new JsonArray([.. lines.Append("Inert matter 2 %").Select(l => JsonValue.Create(l))]);
            Drop(blend, "components", "otherCrop", "inert", "weed", "noxious", "coating", "treated", "tested", "lot", "preinoculated");
        }
    }

    private static JsonArray Noxious(Draw draw) =>
        [new JsonObject { ["name"] = draw.Pick("dodder", "wild onion"), ["seedsPerPound"] = draw.Whole(0, 40) }];

    private static IEnumerable<JsonObject> Rows(JsonObject of, string list) =>
        (of[list] as JsonArray ?? []).Select(row => row!.AsObject());

    private static void Drop(JsonObject of, params string[] fields)
    {
        foreach (string field in fields)
        {
            of.Remove(field);
        }
    }
}
